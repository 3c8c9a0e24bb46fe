package org.draftingmaths.reference.print;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A program that is not ours, run to its end or to a time limit. */
final class Program {

    private static final long SECONDS = 120;

    private Program() {}

    /** What it said; a failure when it does not end well or in time. */
    static String run(Path folder, String... command) throws IOException, InterruptedException {
        Path said = Files.createTempFile(folder, "said", ".txt");
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        if (!process.waitFor(SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IllegalStateException(List.of(command) + " took more than " + SECONDS + " s.");
        }
        String words = Files.readString(said, StandardCharsets.UTF_8);
        Files.delete(said);
        if (process.exitValue() != 0) {
            throw new IllegalStateException(List.of(command) + " failed: " + words);
        }
        return words;
    }
}
