package org.limedry.cli.site.schema;

import java.util.List;

/** A part of a YAML file with the line on which it begins. */
public sealed interface Node {
    /** Returns the line, counted from 1. */
    int line();

    /** Returns what it is, for a problem's text. */
    String words();

    /** How a scalar is written. */
    enum Kind {
        /** Text, dates included. */
        TEXT,
        /** A number, infinity and "not a number" included. */
        NUMBER,
        /** True or false. */
        FLAG,
        /** Nothing, or the word null. */
        EMPTY
    }

    /**
     * A single value.
     *
     * @param text as it stands in the file, quotes removed
     */
    record Scalar(int line, Kind kind, String text) implements Node {
        private static final int LONGEST = 60;

        @Override
        public String words() {
            return kind == Kind.EMPTY ? "nothing" : kind == Kind.TEXT ? "\"" + shortened() + "\"" : shortened();
        }

        private String shortened() {
            return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "...";
        }
    }

    /** Values under each other or in square brackets. */
    record Items(int line, List<Node> items) implements Node {
        public Items {
            items = List.copyOf(items);
        }

        @Override
        public String words() {
            return "a list";
        }
    }

    /** Keys with values. */
    record Group(int line, List<Member> members) implements Node {
        public Group {
            members = List.copyOf(members);
        }

        @Override
        public String words() {
            return "a group of keys";
        }
    }

    /**
     * One key of a group with its value.
     *
     * @param line line of the key
     */
    record Member(int line, String key, Node value) {}
}
