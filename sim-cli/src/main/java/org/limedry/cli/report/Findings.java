package org.limedry.cli.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Names;
import org.limedry.cli.safety.Situation;
import org.limedry.lime.CoatPlan;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.WaterAccount;
import org.limedry.study.ReadyRange;
import org.limedry.wall.WallPlan;

/**
 * Everything a report is made from.
 *
 * @param notes what the site file says beside the scenario
 * @param scenario what was run
 * @param outcome what the likely run found
 * @param ranges one for each coat of the scenario, or none if only the likely dates were asked for
 * @param effort what it took
 */
record Findings(SiteNotes notes, Scenario scenario, Outcome outcome, List<ReadyRange> ranges, Effort effort) {
    Findings {
        ranges = List.copyOf(ranges);
        int coats = scenario.coats().size();
        if (outcome.coats().size() != coats || !(ranges.isEmpty() || ranges.size() == coats)) {
            throw new IllegalArgumentException("ranges: must be one for each of " + coats + " coats or none, was "
                    + ranges.size() + " for " + outcome.coats().size() + " results");
        }
    }

    /** Tells whether only the likely dates were asked for. */
    boolean quick() {
        return ranges.isEmpty();
    }

    /** Returns the wording of dates for this run. */
    Days days() {
        return Days.of(notes.zone(), scenario.from(), scenario.until());
    }

    /** Returns the coats in the order of the scenario. */
    List<Coat> coats() {
        return IntStream.range(0, scenario.coats().size()).mapToObj(this::coat).toList();
    }

    /** Returns the warnings, those of one kind about one thing told as one. */
    List<WarningGroup> warnings() {
        return WarningGroup.of(outcome.warnings());
    }

    /**
     * Returns what a wall, or another thing in a room, is called on the page: "store north" is the "store north wall",
     * and the "north wall" where there is but one room.
     */
    String words(String name) {
        if (name.isEmpty()) {
            return "walls";
        }
        String room = scenario.rooms().get(0).name() + " ";
        boolean redundant = scenario.rooms().size() == 1 && name.startsWith(room);
        return Names.wall(redundant ? name.substring(room.length()) : name);
    }

    /**
     * Returns what the site has and what a page about it advises.
     *
     * @param todo the things to do that the page gives
     */
    Situation situation(List<DoLine> todo) {
        return notes.work()
                .with(scenario, notes.zone())
                .with(outcome)
                .advising(todo.stream().flatMap(line -> line.advised().stream()).toList());
    }

    /** Returns the plan of a wall. */
    WallPlan wall(String name) {
        return scenario.walls().stream()
                .filter(wall -> wall.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Returns the water account of a room. */
    WaterAccount roomAccount(String room) {
        return outcome.roomAccounts().stream()
                .filter(account -> account.room().equals(room))
                .findFirst()
                .orElseThrow()
                .account();
    }

    private Coat coat(int index) {
        Optional<ReadyRange> range = quick() ? Optional.empty() : Optional.of(ranges.get(index));
        CoatPlan plan = scenario.coats().get(index);
        return new Coat(index, words(plan.wall()), plan, outcome.coats().get(index), range);
    }
}
