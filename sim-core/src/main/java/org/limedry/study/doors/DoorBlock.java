package org.limedry.study.doors;

import java.util.ArrayList;
import java.util.List;

/**
 * Hours of a day with the same word.
 *
 * @param firstHour first hour, counted from the start of the day in the plan
 * @param hours how many
 * @param word what to do
 */
public record DoorBlock(int firstHour, int hours, DoorReason.Word word) {
    /** Nobody walks to the door for less. */
    static final int SHORTEST_HOURS = 2;

    /**
     * Returns the blocks of a day. A word that would stand for less than two hours gives way to the longer of its
     * neighbours (shut doors where they are equal), unless its reason is binding: then it takes the hour beside it.
     *
     * @param reasons one for each hour; not empty
     */
    static List<DoorBlock> of(List<DoorReason> reasons) {
        List<DoorReason> hours = new ArrayList<>(reasons);
        widenBinding(hours);
        List<DoorBlock> blocks = blocks(hours.stream().map(DoorReason::word).toList());
        List<Boolean> bound = hours.stream().map(DoorReason::isBinding).toList();
        int shortest = shortest(blocks, bound);
        while (shortest >= 0 && blocks.size() > 1) {
            blocks = joined(blocks, shortest);
            shortest = shortest(blocks, bound);
        }
        return List.copyOf(blocks);
    }

    /** Gives a single binding hour the one after it, or in the evening the one before it. */
    private static void widenBinding(List<DoorReason> hours) {
        List<DoorReason> asked = List.copyOf(hours);
        for (int hour = 0; hour < asked.size() && asked.size() > 1; hour++) {
            DoorReason reason = asked.get(hour);
            boolean alone = !hasWord(hours, hour - 1, reason.word()) && !hasWord(hours, hour + 1, reason.word());
            if (reason.isBinding() && alone) {
                int beside = hour + 1 < asked.size() ? hour + 1 : hour - 1;
                hours.set(beside, weightier(reason, hours.get(beside)));
            }
        }
    }

    /** The order of the constants is that of their weight. */
    private static DoorReason weightier(DoorReason one, DoorReason other) {
        return one.compareTo(other) < 0 ? one : other;
    }

    private static boolean hasWord(List<DoorReason> hours, int hour, DoorReason.Word word) {
        return hour >= 0 && hour < hours.size() && hours.get(hour).word() == word;
    }

    private static List<DoorBlock> blocks(List<DoorReason.Word> words) {
        List<DoorBlock> blocks = new ArrayList<>();
        for (int hour = 0; hour < words.size(); hour++) {
            add(blocks, new DoorBlock(hour, 1, words.get(hour)));
        }
        return blocks;
    }

    private static void add(List<DoorBlock> blocks, DoorBlock next) {
        int last = blocks.size() - 1;
        if (last >= 0 && blocks.get(last).word() == next.word()) {
            DoorBlock before = blocks.get(last);
            blocks.set(last, new DoorBlock(before.firstHour(), before.hours() + next.hours(), next.word()));
        } else {
            blocks.add(next);
        }
    }

    /** Returns the first block that is too short and free to go, or -1. */
    private static int shortest(List<DoorBlock> blocks, List<Boolean> bound) {
        for (int at = 0; at < blocks.size(); at++) {
            DoorBlock block = blocks.get(at);
            boolean free = !bound.subList(block.firstHour(), block.endHour()).contains(true);
            if (block.hours() < SHORTEST_HOURS && free) {
                return at;
            }
        }
        return -1;
    }

    private static List<DoorBlock> joined(List<DoorBlock> blocks, int at) {
        DoorReason.Word word = neighbour(blocks, at);
        List<DoorBlock> result = new ArrayList<>();
        for (int i = 0; i < blocks.size(); i++) {
            DoorBlock block = blocks.get(i);
            add(result, i == at ? new DoorBlock(block.firstHour(), block.hours(), word) : block);
        }
        return result;
    }

    private static DoorReason.Word neighbour(List<DoorBlock> blocks, int at) {
        if (at == 0) {
            return blocks.get(1).word();
        } else if (at == blocks.size() - 1) {
            return blocks.get(at - 1).word();
        }
        DoorBlock before = blocks.get(at - 1);
        DoorBlock after = blocks.get(at + 1);
        if (before.hours() == after.hours()) {
            boolean shut = before.word() == DoorReason.Word.SHUT || after.word() == DoorReason.Word.SHUT;
            return shut ? DoorReason.Word.SHUT : before.word();
        }
        return before.hours() > after.hours() ? before.word() : after.word();
    }

    /** Returns the first hour after it. */
    public int endHour() {
        return firstHour + hours;
    }
}
