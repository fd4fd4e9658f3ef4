package org.limedry.cli.chart;

import java.util.List;
import java.util.stream.Collectors;
import org.limedry.cli.chart.ShownAccount.ShownTerm;

/** The sentences of a water account. */
final class AccountWords {
    private final ShownAccount account;

    AccountWords(ShownAccount account) {
        this.account = account;
    }

    String putIn() {
        return "Put in: " + Litres.text(account.totalIn()) + " litres";
    }

    String whereNow() {
        return "Where it is now: " + Litres.text(account.totalNow()) + " litres";
    }

    String gone() {
        return "gone " + Litres.text(account.totalGone());
    }

    String stillHere() {
        return "still here " + Litres.text(account.totalStillHere());
    }

    boolean nothingCondensed() {
        return account.totalOnTheWay().signum() == 0;
    }

    String onTheWay() {
        return nothingCondensed()
                ? "On the way no water condensed"
                : "On the way " + Litres.text(account.totalOnTheWay())
                        + " litres condensed and went round again (not part of the sum)";
    }

    /** Returns what became of the condensed water, in one line. */
    String becameOfIt() {
        return list(account.onTheWay());
    }

    String story() {
        String way = nothingCondensed()
                ? "No water condensed on the way."
                : "Apart from the sum, " + Litres.text(account.totalOnTheWay()) + " litres condensed on the way: "
                        + becameOfIt() + ".";
        return putIn() + ": " + list(account.putIn()) + ". " + whereNow() + ". Of these " + gone() + ": "
                + list(account.gone()) + ". And " + stillHere() + ": " + list(account.stillHere()) + ". " + way;
    }

    private static String list(List<ShownTerm> terms) {
        List<String> seen = terms.stream()
                .filter(term -> term.litres().signum() > 0)
                .map(ShownTerm::text)
                .toList();
        return seen.isEmpty() ? "nothing" : seen.stream().collect(Collectors.joining(", "));
    }
}
