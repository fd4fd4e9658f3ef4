package org.limedry.study;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.WaterAccount;
import org.limedry.units.Check;

/**
 * What an {@link Ensemble} found: the likely run whole, dates and litres of each member, and the range of each coat.
 *
 * @param likely the run with every unknown at its likely value
 * @param members one entry for each draw, in the order of the draws
 * @param coats one entry for each coat of the scenario, in its order; none without members
 */
public record EnsembleResult(Outcome likely, List<Member> members, List<ReadyRange> coats) {
    /**
     * What is kept of a member.
     *
     * @param draw where its unknowns lay
     * @param ending how it ended
     * @param coats its coats, in the order of the scenario
     * @param account its water account, whole site
     * @param roomAccounts its water account, room by room in the order of the scenario
     */
    public record Member(
            Draw draw,
            Outcome.Ending ending,
            List<Outcome.CoatResult> coats,
            WaterAccount account,
            List<Outcome.RoomAccount> roomAccounts) {
        public Member {
            coats = List.copyOf(coats);
            roomAccounts = List.copyOf(roomAccounts);
        }

        /** Returns the same member with its unknowns told otherwise. */
        public Member at(Draw other) {
            return new Member(other, ending, coats, account, roomAccounts);
        }

        static Member of(Draw draw, Outcome outcome) {
            return new Member(draw, outcome.ending(), outcome.coats(), outcome.account(), outcome.roomAccounts());
        }
    }

    public EnsembleResult {
        members = List.copyOf(members);
        coats = List.copyOf(coats);
    }

    /** Returns how many members the solver gave up: their coats count as not ready from then on. */
    public long membersGivenUp() {
        return members.stream()
                .filter(member -> member.ending() instanceof Outcome.Ending.GaveUp)
                .count();
    }

    /** Returns when the last coat of the likely run is ready, if that comes within the run. */
    public Optional<Instant> jobReady() {
        return ReadyRange.lastOf(likely.coats()).ready();
    }

    /** Returns when the last coat is ready, whichever it is in each member; empty without members. */
    public Optional<ReadyRange> job() {
        return members.isEmpty() ? Optional.empty() : Optional.of(last(coat -> true));
    }

    /**
     * Returns when the last of some coats is ready, whichever it is in each member; without members all three dates are that
     * of the likely run.
     *
     * @param some picks the coats, at least one
     */
    public ReadyRange last(Predicate<Outcome.CoatResult> some) {
        Outcome.CoatResult last = lastOf(likely.coats(), some);
        List<Outcome.CoatResult> inMembers =
                members.stream().map(member -> lastOf(member.coats(), some)).toList();
        return ReadyRange.of(last, inMembers.isEmpty() ? List.of(last) : inMembers);
    }

    private static Outcome.CoatResult lastOf(List<Outcome.CoatResult> coats, Predicate<Outcome.CoatResult> some) {
        return ReadyRange.lastOf(coats.stream().filter(some).toList());
    }

    static EnsembleResult of(Outcome likely, List<Member> members) {
        if (members.isEmpty()) {
            return new EnsembleResult(likely, List.of(), List.of());
        }
        for (Member member : members) {
            int found = member.coats().size();
            Check.that(found == likely.coats().size(), "coats", "as many in every member as in the likely run", found);
        }
        List<ReadyRange> coats = new ArrayList<>();
        for (int i = 0; i < likely.coats().size(); i++) {
            int coat = i;
            coats.add(ReadyRange.of(
                    likely.coats().get(i),
                    members.stream().map(member -> member.coats().get(coat)).toList()));
        }
        return new EnsembleResult(likely, members, coats);
    }
}
