package org.limedry.cli.site.schema;

/**
 * Where in the file something stands, and where a problem with it goes.
 *
 * @param problems the collection
 * @param path path of the field, such as {@code coats[1].wall}; empty for the whole file
 * @param line line, counted from 1; 0 for the whole file
 */
public record Place(Problems problems, String path, int line) {
    /** Returns the place of a key under this one. */
    public Place key(String name, int atLine) {
        return new Place(problems, path.isEmpty() ? name : path + "." + name, atLine);
    }

    /** Returns the place of an item of a list at this one. */
    public Place item(int index, int atLine) {
        return new Place(problems, path + "[" + index + "]", atLine);
    }

    /** Returns the file and the line, "site.yaml:23". */
    public String words() {
        return line > 0 ? problems.file() + ":" + line : problems.file();
    }

    /**
     * Reports a problem here.
     *
     * @param found what stands here
     * @param rule what should
     */
    public void problem(String found, String rule) {
        problems.add(line, path, found, rule);
    }
}
