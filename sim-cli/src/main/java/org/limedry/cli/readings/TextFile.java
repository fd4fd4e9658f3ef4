package org.limedry.cli.readings;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Function;
import org.limedry.cli.problem.InputProblem;

/** Reads a text file, or says why it cannot be one. */
public final class TextFile {
    private static final String BYTE_ORDER_MARK = "\uFEFF";
    private static final int LEAST_TEXT_TO_JUNK = 20;

    private TextFile() {}

    /** What became of a file. */
    public sealed interface Content {}

    /** The text, a byte order mark taken off. */
    public record Text(String text) implements Content {}

    /** What is wrong with the file as a whole. */
    public record Unreadable(InputProblem problem) implements Content {}

    /**
     * Reads a file in UTF-8.
     *
     * @param file the file
     * @param shown the file as the user named it
     * @param path field of the site file that names it; empty if it is the site file
     * @param mostBytes a file that is larger is refused unread
     */
    public static Content read(Path file, String shown, String path, long mostBytes) {
        return read(file, shown, path, mostBytes, bytes -> decoded(bytes, shown, path));
    }

    /** Reads a file that a machine wrote, in whichever {@link Encoding} it has. */
    public static Content readOfAnyEncoding(Path file, String shown, long mostBytes) {
        return read(file, shown, "", mostBytes, bytes -> {
            String text = Encoding.of(bytes).decode(bytes);
            return isMostlyText(text)
                    ? new Text(text)
                    : unreadable(shown, "", "this is not text", "must be a text file");
        });
    }

    /** A logger that loses its power may leave a few zero bytes; they spoil their line, not the file. */
    private static boolean isMostlyText(String text) {
        long unprintable = text.chars()
                .filter(c -> Character.isISOControl(c) && !Character.isWhitespace(c))
                .count();
        return unprintable * LEAST_TEXT_TO_JUNK <= text.length();
    }

    private static Content read(
            Path file, String shown, String path, long mostBytes, Function<byte[], Content> decoder) {
        if (!Files.exists(file)) {
            return unreadable(shown, path, "there is no such file", "must be a file");
        }
        if (Files.isDirectory(file)) {
            return unreadable(shown, path, "this is a folder", "must be a file");
        }
        if (!Files.isRegularFile(file)) {
            return unreadable(shown, path, "this is a pipe or a device", "must be a file; save it to one first");
        }
        try {
            long bytes = Files.size(file);
            if (bytes > mostBytes) {
                return unreadable(shown, path, bytes + " bytes", "must be at most " + mostBytes);
            }
            return decoder.apply(Files.readAllBytes(file));
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
