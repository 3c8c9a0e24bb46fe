package org.draftingmaths.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Cubic;

/** The reference cubics with their lengths to sixty digits. */
final class Cubics {

    private static final Path FILE =
            Path.of("reference-checks/src/test/resources/org/draftingmaths/reference/cubic-lengths.csv");

    private Cubics() {}

    record Known(Cubic cubic, double length, String kind) {
        /** Smooth, inflected, nearly straight and hooked ones are what a patternmaker draws; the nasty ones break things. */
        boolean realistic() {
            return !kind.startsWith("nasty");
        }
    }

    static List<Known> all() {
        try (Stream<String> lines = Files.lines(FILE)) {
            return lines.filter(line -> !line.startsWith("#") && !line.startsWith("x0"))
                    .map(Cubics::known)
                    .toList();
        } catch (IOException missing) {
            throw new UncheckedIOException("Run this from the project's top folder.", missing);
        }
    }

    private static Known known(String line) {
        String[] cells = line.split(",", -1);
        double[] v = Stream.of(cells).limit(9).mapToDouble(Double::parseDouble).toArray();
        return new Known(
                new Cubic(
                        Vector2D.of(v[0], v[1]),
                        Vector2D.of(v[2], v[3]),
                        Vector2D.of(v[4], v[5]),
                        Vector2D.of(v[6], v[7])),
                v[8],
                cells[9]);
    }
}
