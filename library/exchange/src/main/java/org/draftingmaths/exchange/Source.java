package org.draftingmaths.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;

/** The bytes of a file, and the limits within which they are read. The clock runs from its making. */
final class Source {

    /** How often the clock is looked at. */
    private static final int VALUES_PER_LOOK = 4_096;

    private final String name;
    private final byte[] bytes;
    private final Limits limits;
    private final long started = System.nanoTime();
    private int values;

    Source(String name, byte[] bytes, Limits limits) {
        this.name = name;
        this.bytes = bytes;
        this.limits = limits;
        if (bytes.length > limits.bytes()) {
            throw tooLarge(name, limits);
        }
    }

    /** Reads no more than the limit allows, however long the file is or grows. */
    static Source of(Path file, Limits limits) throws IOException {
        String name = String.valueOf(file.getFileName());
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes((int) Math.min(Integer.MAX_VALUE - 8, limits.bytes() + 1));
            return new Source(name, bytes, limits);
        } catch (NoSuchFileException missing) {
            throw new FileException(name, "", "there is no such file", missing);
        }
    }

    private static FileException tooLarge(String name, Limits limits) {
        return new FileException(name, "", "the file has more than the " + limits.bytes() + " bytes that are read");
    }

    String name() {
        return name;
    }

    byte[] bytes() {
        return bytes;
    }

    Limits limits() {
        return limits;
    }

    String text() {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException malformed) {
            throw new FileException(name, "", "the file is not in UTF-8", malformed);
        }
    }

    FileException refused(String place, String reason) {
        return new FileException(name, place, reason);
    }

    /** Counts one value, point or element; looks at the clock now and then. */
    void count(Supplier<String> place) {
        values++;
        if (values > limits.values()) {
            throw refused(place.get(), "the file holds more than the " + limits.values() + " values that are read");
        }
        if (values % VALUES_PER_LOOK == 0) {
            requireTime(place.get());
        }
    }

    void requireTime(String place) {
        if (System.nanoTime() - started > limits.time().toNanos()) {
            throw refused(
                    place, "reading took longer than the " + limits.time().toMillis() / 1000.0 + " seconds allowed");
        }
    }

    void requireParts(String place, List<?> parts) {
        if (parts.size() > limits.parts()) {
            throw refused(
                    place, "there are " + parts.size() + " in this list; at most " + limits.parts() + " are read");
        }
    }
}
