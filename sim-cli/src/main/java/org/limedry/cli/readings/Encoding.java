package org.limedry.cli.readings;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** How the bytes of a logger file spell letters: told by the mark at its start, or by what the bytes can be. */
enum Encoding {
    UTF_8_WITH_MARK(StandardCharsets.UTF_8, "\u00EF\u00BB\u00BF"),
    UTF_16_LITTLE(StandardCharsets.UTF_16LE, "\u00FF\u00FE"),
    UTF_16_BIG(StandardCharsets.UTF_16BE, "\u00FE\u00FF"),
    UTF_8(StandardCharsets.UTF_8, ""),
    WINDOWS_1252(Charset.forName("windows-1252"), "");

    private final Charset charset;
    /** Its first bytes, each as the letter of that number. */
    private final String mark;

    Encoding(Charset charset, String mark) {
        this.charset = charset;
        this.mark = mark;
    }

    static Encoding of(byte[] bytes) {
        return Arrays.stream(values())
                .filter(encoding -> !encoding.mark.isEmpty() && encoding.begins(bytes))
                .findFirst()
                .orElseGet(() -> isUtf8(bytes) ? UTF_8 : WINDOWS_1252);
    }

    /** Returns the text without its mark; bytes that spell nothing become replacement characters. */
    String decode(byte[] bytes) {
        return new String(bytes, mark.length(), bytes.length - mark.length(), charset);
    }

    private boolean begins(byte[] bytes) {
        return new String(bytes, 0, Math.min(bytes.length, mark.length()), StandardCharsets.ISO_8859_1).equals(mark);
    }

    private static boolean isUtf8(byte[] bytes) {
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }
}
