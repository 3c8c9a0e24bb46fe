package org.draftingmaths.lessons;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Mates;
import org.draftingmaths.unit.Steps;

/** The seams of a draft as a table of plain text. */
final class SeamTable {

    /** Behind the name of the seam. */
    private static final String ROW = " %8s  %-20s %-20s %10s  %s%n";

    private static final int NAME = 10;

    private SeamTable() {}

    /**
     * Every notch interval of every seam: its length on the first edge, less what is declared to be held in of it, its length on the second, and by how
     * much they differ.
     */
    static String of(List<Walk> walks, double tolerance) {
        int wide = walks.stream().mapToInt(walk -> walk.seam().name().length()).reduce(NAME, Math::max);
        String row = "%-" + wide + "s" + ROW;
        String head = String.format(Locale.ROOT, row, "seam", "interval", "first edge", "second edge", "differ", "");
        return head
                + walks.stream()
                        .flatMap(walk -> walk.intervals().stream().map(interval -> row(row, walk, interval, tolerance)))
                        .collect(Collectors.joining());
    }

    private static String row(String row, Walk walk, Walk.Interval interval, double tolerance) {
        double difference = interval.difference();
        Mates.Printed printed = printed(interval, tolerance);
        return String.format(
                Locale.ROOT,
                row,
                walk.seam().name(),
                interval.number() + " of " + walk.intervals().size(),
                Steps.DEFAULT.both(printed.first()),
                Steps.DEFAULT.both(printed.second()),
                String.format(Locale.ROOT, "%.2f mm", unsigned(difference)),
                Math.abs(difference) <= tolerance ? "matches" : "DOES NOT MATCH");
    }

    /** Mates that match are printed alike, the first less what is held in of it. */
    static Mates.Printed printed(Walk.Interval interval, double tolerance) {
        return Mates.printAlike(
                Length.mm(interval.first() - interval.surplus()), Length.mm(interval.second()), Length.mm(tolerance));
    }

    /** Nothing is printed as nothing, and never as minus nothing. */
    static double unsigned(double difference) {
        return Math.abs(difference) < 0.005 ? 0.0 : difference;
    }
}
