package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Straight;
import org.draftingmaths.unit.Asked;

/** Whether two pieces would cut the same cloth, and if not, where they differ. */
public final class SameCloth {

    private static final int SAMPLES = 64;

    private SameCloth() {}

    /**
     * Where two pieces differ.
     *
     * @param one a piece
     * @param other another
     * @param tolerance how far in mm corresponding points may lie apart
     * @return the differences in words; empty when they would cut the same cloth
     */
    public static List<String> differences(Piece one, Piece other, double tolerance) {
        Asked.lengthOrNone("A tolerance", tolerance);
        List<String> found = new ArrayList<>();
        compareEdges(one, other, tolerance, found);
        compareOpenings(one, other, tolerance, found);
        compareRuns(one, other, tolerance, found);
        compareLines(one, other, tolerance, found);
        compareInsideDarts(one, other, tolerance, found);
        compareNotches(one, other, tolerance, found);
        compareGrain(one.grain(), other.grain(), tolerance, found);
        return found;
    }

    private static void compareEdges(Piece one, Piece other, double tolerance, List<String> found) {
        List<Edge> mine = sorted(one.edges(), Comparator.comparing(Edge::name));
        List<Edge> its = sorted(other.edges(), Comparator.comparing(Edge::name));
        if (!mine.stream()
                .map(Edge::name)
                .toList()
                .equals(its.stream().map(Edge::name).toList())) {
            found.add("edges " + mine.stream().map(Edge::name).toList() + " and "
                    + its.stream().map(Edge::name).toList());
            return;
        }
        for (int i = 0; i < mine.size(); i++) {
            Edge a = mine.get(i);
            Edge b = its.get(i);
            if (a.role() != b.role() || a.allowance() != b.allowance() || apart(a.base(), b.base()) > tolerance) {
                found.add("edge '" + a.name() + "'");
            }
        }
    }

    private static void compareOpenings(Piece one, Piece other, double tolerance, List<String> found) {
        List<Opening> mine = sorted(one.openings(), Comparator.comparing(Opening::name));
        List<Opening> its = sorted(other.openings(), Comparator.comparing(Opening::name));
        if (!mine.stream()
                .map(Opening::name)
                .toList()
                .equals(its.stream().map(Opening::name).toList())) {
            found.add("openings " + mine.stream().map(Opening::name).toList() + " and "
                    + its.stream().map(Opening::name).toList());
            return;
        }
        for (int i = 0; i < mine.size(); i++) {
            if (!same(mine.get(i), its.get(i), tolerance)) {
                found.add("opening '" + mine.get(i).name() + "'");
            }
        }
    }

    private static boolean same(Opening a, Opening b, double tolerance) {
        return same(a.mouth(), b.mouth(), tolerance)
                && a.farMouth().isPresent() == b.farMouth().isPresent()
                && a.farMouth()
                        .map(mouth -> same(mouth, b.farMouth().orElseThrow(), tolerance))
                        .orElse(true)
                && Math.abs(a.before().length() - b.before().length()) <= tolerance
                && Math.abs(a.after().length() - b.after().length()) <= tolerance;
    }

    private static boolean same(Mouth a, Mouth b, double tolerance) {
        return a.border().equals(b.border())
                && a.use().equals(b.use())
                && Math.abs(a.before() - b.before()) <= tolerance
                && Math.abs(a.after() - b.after()) <= tolerance;
    }

    /** Runs are compared by where they lie, whatever their order in the panels and the openings' own bases. */
    private static void compareRuns(Piece one, Piece other, double tolerance, List<String> found) {
        List<Run> mine = runs(one);
        List<Run> its = runs(other);
        if (one.panels().size() != other.panels().size() || mine.size() != its.size()) {
            found.add(one.panels().size() + " panels of " + mine.size() + " runs and "
                    + other.panels().size() + " panels of " + its.size() + " runs");
            return;
        }
        for (int i = 0; i < mine.size(); i++) {
            Run a = mine.get(i);
            Run b = its.get(i);
            if (!a.border().equals(b.border())
                    || a.forward() != b.forward()
                    || Math.abs(a.from() - b.from()) > tolerance
                    || apart(one.place(a), other.place(b)) > tolerance) {
                found.add("run along " + a.border().words() + " from " + a.from() + " mm");
            }
        }
    }

    private static List<Run> runs(Piece piece) {
        return piece.panels().stream()
                .flatMap(panel -> panel.ring().stream())
                .sorted(Comparator.comparing((Run run) -> run.border().toString())
                        .thenComparingDouble(Run::from))
                .toList();
    }

    private static void compareLines(Piece one, Piece other, double tolerance, List<String> found) {
        List<Stretch> mine = stretches(one);
        List<Stretch> its = stretches(other);
        if (mine.size() != its.size()) {
            found.add(mine.size() + " and " + its.size() + " stretches of level lines");
            return;
        }
        for (int i = 0; i < mine.size(); i++) {
            Stretch a = mine.get(i);
            Stretch b = its.get(i);
            if (!a.line().equals(b.line()) || apart(one.place(a), other.place(b)) > tolerance) {
                found.add("level line '" + a.line() + "' from " + a.from() + " mm");
            }
        }
    }

    private static List<Stretch> stretches(Piece piece) {
        return piece.panels().stream()
                .flatMap(panel -> panel.lines().stream())
                .sorted(Comparator.comparing(Stretch::line).thenComparingDouble(Stretch::from))
                .toList();
    }

    private static void compareInsideDarts(Piece one, Piece other, double tolerance, List<String> found) {
        List<Laid> mine = laid(one);
        List<Laid> its = laid(other);
        boolean same = mine.size() == its.size();
        for (int i = 0; same && i < mine.size(); i++) {
            same = mine.get(i).dart().equals(its.get(i).dart())
                    && apart(one.place(mine.get(i)), other.place(its.get(i))) <= tolerance;
        }
        if (!same) {
            found.add("inside darts " + mine + " and " + its);
        }
    }

    private static List<Laid> laid(Piece piece) {
        return piece.panels().stream()
                .flatMap(panel -> panel.darts().stream())
                .sorted(Comparator.comparing(Laid::dart))
                .toList();
    }

    private static void compareNotches(Piece one, Piece other, double tolerance, List<String> found) {
        Comparator<Notch> order = Comparator.comparing(Notch::edge).thenComparingDouble(Notch::arc);
        List<Notch> mine = sorted(one.notches(), order);
        List<Notch> its = sorted(other.notches(), order);
        boolean same = mine.size() == its.size();
        for (int i = 0; same && i < mine.size(); i++) {
            Notch a = mine.get(i);
            Notch b = its.get(i);
            same = a.edge().equals(b.edge()) && a.beside() == b.beside() && Math.abs(a.arc() - b.arc()) <= tolerance;
        }
        if (!same) {
            found.add("notches " + mine + " and " + its);
        }
    }

    private static void compareGrain(Optional<Grain> one, Optional<Grain> other, double tolerance, List<String> found) {
        boolean same = one.isPresent() == other.isPresent()
                && one.map(grain -> grain.from().distance(other.orElseThrow().from()) <= tolerance
                                && grain.to().distance(other.orElseThrow().to()) <= tolerance)
                        .orElse(true);
        if (!same) {
            found.add("grain " + one + " and " + other);
        }
    }

    /** The widest gap between corresponding points: ends, handles and centres of curves of one kind, else points at equal arcs. */
    private static double apart(CurvePath one, CurvePath other) {
        if (one.curves().size() != other.curves().size()) {
            return sampled(one, other);
        }
        double widest = 0;
        for (int i = 0; i < one.curves().size(); i++) {
            widest = Math.max(widest, apart(one.curves().get(i), other.curves().get(i)));
        }
        return widest;
    }

    private static double apart(Curve one, Curve other) {
        double ends = Math.max(one.start().distance(other.start()), one.end().distance(other.end()));
        if (one instanceof Straight && other instanceof Straight) {
            return ends;
        }
        if (one instanceof Cubic a && other instanceof Cubic b) {
            return Math.max(
                    ends,
                    Math.max(
                            a.startHandle().distance(b.startHandle()),
                            a.endHandle().distance(b.endHandle())));
        }
        if (one instanceof Arc a && other instanceof Arc b) {
            return Math.max(
                    ends, Math.max(a.centre().distance(b.centre()), a.at(0.5).distance(b.at(0.5))));
        }
        return sampled(CurvePath.of(one), CurvePath.of(other));
    }

    private static double sampled(CurvePath one, CurvePath other) {
        double lengthOne = one.length();
        double lengthOther = other.length();
        double widest = Math.max(
                Math.abs(lengthOne - lengthOther),
                Math.max(one.start().distance(other.start()), one.end().distance(other.end())));
        for (int i = 1; i < SAMPLES; i++) {
            Vector2D a = one.pointAt(lengthOne * i / SAMPLES);
            Vector2D b = other.pointAt(lengthOther * i / SAMPLES);
            widest = Math.max(widest, a.distance(b));
        }
        return widest;
    }

    private static <T> List<T> sorted(List<T> list, Comparator<T> order) {
        return list.stream().sorted(order).toList();
    }
}
