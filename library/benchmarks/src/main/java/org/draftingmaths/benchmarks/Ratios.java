package org.draftingmaths.benchmarks;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.locationtech.jts.geom.Geometry;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Runs all the work in one go and prints the table of ratios, with the errors measured against the sixty-digit lengths. */
public final class Ratios {

    private Ratios() {}

    /**
     * Prints the table.
     *
     * @param args nothing
     * @throws RunnerException when the harness fails
     */
    public static void main(String[] args) throws RunnerException {
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include(Work.class.getName())
                        .forks(1)
                        .warmupIterations(8)
                        .warmupTime(TimeValue.milliseconds(500))
                        .measurementIterations(6)
                        .measurementTime(TimeValue.milliseconds(500))
                        .verbosity(VerboseMode.SILENT)
                        .build())
                .run();
        // The median of single calls: few are interrupted, however much else the machine has to do.
        Map<String, Double> times = results.stream()
                .collect(Collectors.toMap(
                        result -> result.getPrimaryResult().getLabel(),
                        result -> result.getPrimaryResult().getStatistics().getPercentile(50)));
        Work work = new Work();
        work.read();
        List<Cubics.Known> good = work.realistic;
        List<Cubics.Known> bad = work.nasty;
        row(
                "length to 1e-9, realistic",
                "Romberg at 1e-9",
                times,
                "lengthNine",
                "rombergNine",
                error(good, k -> k.cubic().length(1e-9)),
                error(good, k -> Work.romberg(k.cubic(), 1e-9)));
        row(
                "length to 1e-9, realistic",
                "fixed 32-node Gauss",
                times,
                "lengthNine",
                "gaussFixed",
                error(good, k -> k.cubic().length(1e-9)),
                error(good, k -> work.gauss(k.cubic())));
        row(
                "length to 1e-6, realistic",
                "Romberg at 1e-6",
                times,
                "lengthSix",
                "rombergSix",
                error(good, k -> k.cubic().length(1e-6)),
                error(good, k -> Work.romberg(k.cubic(), 1e-6)));
        row(
                "length to 1e-3, realistic",
                "Romberg at 1e-6",
                times,
                "lengthThree",
                "rombergSix",
                error(good, k -> k.cubic().length(1e-3)),
                error(good, k -> Work.romberg(k.cubic(), 1e-6)));
        row(
                "length to 1e-6, realistic",
                "JTS, chords enough",
                times,
                "lengthSix",
                "polylineSix",
                error(good, k -> k.cubic().length(1e-6)),
                chords(good, work.cornersSix));
        row(
                "length to 1e-3, realistic",
                "JTS, chords enough",
                times,
                "lengthThree",
                "polylineThree",
                error(good, k -> k.cubic().length(1e-3)),
                chords(good, work.cornersThree));
        row(
                "length to 1e-9, nasty",
                "Romberg at 1e-9",
                times,
                "lengthNineNasty",
                "rombergNineNasty",
                error(bad, k -> k.cubic().length(1e-9)),
                error(bad, k -> Work.romberg(k.cubic(), 1e-9)));
        row(
                "place at a length, 1e-9",
                "Brent, iterative Gauss",
                times,
                "place",
                "placeBrent",
                error(good, k -> place(k, k.cubic().parameterAt(0.37 * k.length(), 1e-9))),
                error(good, k -> place(k, work.brent(k))));
        row("line cut of a piece", "JTS at 0.01 mm", times, "cut", "cutByJts", 0, 0.01);
        row("line meets 20 edges", "JTS at 0.01 mm", times, "line", "lineByJts", 1e-9, 0.01);
        row("a whole style, 6 x 15 edges", "JTS, allowances only", times, "style", "styleByJts", 0, 0.01);
        CurvePath allowance = work.allowance().outline();
        Geometry buffer = work.allowanceByJts();
        row(
                "allowance of 20 edges",
                "JTS BufferOp, 0.01 mm",
                times,
                "allowance",
                "allowanceByJts",
                Allowances.error(work.ring, p -> Nearest.of(allowance, p).distance()),
                Allowances.error(work.ring, p -> Allowances.distance(buffer, p)));
        System.out.printf(
                Locale.ROOT,
                "allowance of 20 edges: %d curves against %d vertices%n",
                allowance.curves().size(),
                buffer.getNumPoints());
    }

    /** The whole length as the place found would have it: its error is that of the place. */
    private static double place(Cubics.Known known, double t) {
        return known.length() + known.cubic().length(0, t, 1e-10) - 0.37 * known.length();
    }

    private static double chords(List<Cubics.Known> set, List<Integer> corners) {
        return IntStream.range(0, set.size())
                .mapToDouble(i -> set.get(i).length() - Work.polyline(set.get(i).cubic(), corners.get(i)))
                .max()
                .orElseThrow();
    }

    private static double error(List<Cubics.Known> set, ToDoubleFunction<Cubics.Known> length) {
        return set.stream()
                .mapToDouble(known -> Math.abs(length.applyAsDouble(known) - known.length()))
                .max()
                .orElseThrow();
    }

    private static void row(
            String what,
            String other,
            Map<String, Double> times,
            String ours,
            String theirs,
            double error,
            double its) {
        System.out.printf(
                Locale.ROOT,
                "| %-26s | %-20s | %7.2f times as fast | error %.1e against %.1e mm |%n",
                what,
                other,
                times.get(theirs) / times.get(ours),
                error,
                its);
    }
}
