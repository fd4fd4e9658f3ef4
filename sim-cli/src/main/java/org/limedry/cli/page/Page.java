package org.limedry.cli.page;

import java.util.List;

/**
 * A page to read on a telephone or to print and hand over: the answer first, then what it stands on. Texts are plain, not
 * yet escaped.
 *
 * @param head site, kind of page, marks and the answer
 * @param blocks what stands on it, in reading order
 * @param foot what it rests on
 */
public record Page(Head head, List<Block> blocks, Foot foot) {
    public Page {
        blocks = List.copyOf(blocks);
        if (blocks.stream().noneMatch(Block.Cautions.class::isInstance)) {
            throw new IllegalArgumentException("blocks: must hold the cautions that are due, had none");
        }
    }

    /** Returns what must be read before the answer. */
    List<String> dangers() {
        return blocks.stream()
                .filter(Block.Cautions.class::isInstance)
                .flatMap(block -> ((Block.Cautions) block).situation().dangers().stream())
                .toList();
    }

    /**
     * The head.
     *
     * @param site what the user calls the job
     * @param kind what kind of page it is and for which days: "airing, 12 Oct 2026 to 10 Jan 2027"
     * @param invented whether to mark the scenario as invented
     * @param headline the answer, a sentence without a full stop
     */
    public record Head(String site, String kind, boolean invented, String headline) {}

    /**
     * The foot.
     *
     * @param basis how the figures were found and from which runs, a paragraph each
     * @param limits limits of this page beyond those of every page, a sentence each
     * @param attribution statements owed to sources of data
     * @param version version of limedry
     */
    public record Foot(List<String> basis, List<String> limits, List<String> attribution, String version) {
        public Foot {
            basis = List.copyOf(basis);
            limits = List.copyOf(limits);
            attribution = List.copyOf(attribution);
        }
    }
}
