package org.draftingmaths.exchange;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Files that are there whole or not at all. */
public final class Saved {

    private Saved() {}

    /**
     * Writes a text in UTF-8: to a temporary name beside the file, which then takes the file's name. If writing fails, the file is
     * what it was before, and nothing is left beside it.
     *
     * @param file the file; one that is there is replaced
     * @param text what it is to say
     * @throws IOException if it cannot be written
     */
    public static void text(Path file, String text) throws IOException {
        bytes(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Writes bytes, as {@link #text} does.
     *
     * @param file the file; one that is there is replaced
     * @param bytes what it is to hold
     * @throws IOException if it cannot be written
     */
    public static void bytes(Path file, byte[] bytes) throws IOException {
        Path whole = file.toAbsolutePath();
        Path half = Files.createTempFile(whole.getParent(), "." + whole.getFileName(), ".part");
        try {
            // Made anew, so that it may be read by whoever may read other new files: a temporary one is its owner's
            // alone.
            Files.delete(half);
            Files.write(half, bytes, StandardOpenOption.CREATE_NEW);
            move(half, whole);
        } finally {
            Files.deleteIfExists(half);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException unsupported) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
