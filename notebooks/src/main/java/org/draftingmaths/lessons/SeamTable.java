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

    private static final String ROW = "%-10s %8s  %-20s %-20s %10s  %s%n";

    private SeamTable() {}

    /** Every notch interval of every seam: its length on the first edge and on the second, and by how much they differ. */
    static String of(List<Walk> walks, double tolerance) {
        String head = String.format(Locale.ROOT, ROW, "seam", "interval", "first edge", "second edge", "differ", "");
        return head
                + walks.stream()
                        .flatMap(walk -> walk.intervals().stream().map(interval -> row(walk, interval, tolerance)))
                        .collect(Collectors.joining());
    }

    private static String row(Walk walk, Walk.Interval interval, double tolerance) {
        double difference = interval.difference();
        Mates.Printed printed = printed(interval, tolerance);
        return String.format(
                Locale.ROOT,
                ROW,
                walk.seam().name(),
                interval.number() + " of " + walk.intervals().size(),
                Steps.DEFAULT.both(printed.first()),
                Steps.DEFAULT.both(printed.second()),
                String.format(Locale.ROOT, "%.2f mm", unsigned(difference)),
                Math.abs(difference) <= tolerance ? "matches" : "DOES NOT MATCH");
    }

    /** Mates that match are printed alike. */
    static Mates.Printed printed(Walk.Interval interval, double tolerance) {
        return Mates.printAlike(Length.mm(interval.first()), Length.mm(interval.second()), Length.mm(tolerance));
    }

    /** Nothing is printed as nothing, and never as minus nothing. */
    static double unsigned(double difference) {
        return Math.abs(difference) < 0.005 ? 0.0 : difference;
    }
}
