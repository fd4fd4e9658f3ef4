package org.limedry.cli.readings;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.limedry.cli.problem.InputProblem;

/** Reads a text file, or says why it cannot be one. */
public final class TextFile {
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private TextFile() {}

    /** What became of a file. */
    public sealed interface Content {}

    /** The text, a byte order mark taken off. */
    public record Text(String text) implements Content {}

    /** What is wrong with the file as a whole. */
    public record Unreadable(InputProblem problem) implements Content {}

    /**
     * Reads a file.
     *
     * @param file the file
     * @param shown the file as the user named it
     * @param path field of the site file that names it; empty if it is the site file
     * @param mostBytes a file that is larger is refused unread
     */
    public static Content read(Path file, String shown, String path, long mostBytes) {
        if (!Files.exists(file)) {
            return unreadable(shown, path, "there is no such file", "must be a file");
        }
        if (Files.isDirectory(file)) {
            return unreadable(shown, path, "this is a folder", "must be a file");
        }
        try {
            long bytes = Files.size(file);
            if (bytes > mostBytes) {
                return unreadable(shown, path, bytes + " bytes", "must be at most " + mostBytes);
            }
            return decoded(Files.readAllBytes(file), shown, path);
        } catch (IOException e) {
            return unreadable(
                    shown, path, "it cannot be read (" + e.getClass().getSimpleName() + ")", "must be a readable file");
        }
    }

    private static Content decoded(byte[] bytes, String shown, String path) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            if (text.indexOf('\0') < 0) {
                return new Text(text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text);
            }
        } catch (CharacterCodingException e) {
            // Told below, together with text that holds zero bytes.
        }
        return unreadable(shown, path, "this is not text", "must be a text file in UTF-8");
    }

    private static Unreadable unreadable(String shown, String path, String found, String rule) {
        return new Unreadable(new InputProblem(shown, 0, path, rule, found));
    }
}
