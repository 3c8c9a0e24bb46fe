package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Grain;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;

/** Makes pieces of the shapes of a drawing: closes outlines, finds corners, names edges. */
final class Tracing {

    private final Source source;
    private final SvgOptions options;
    private final List<Finding> findings = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();
    private final Set<String> names = new HashSet<>();
    private final List<Strand> grains = new ArrayList<>();

    private Tracing(Source source, SvgOptions options) {
        this.source = source;
        this.options = options;
    }

    static Traced of(String name, Source source, SvgOptions options) {
        SvgReader.Found found = SvgReader.read(source, options.unit());
        Tracing tracing = new Tracing(source, options);
        found.leftOut()
                .forEach((element, count) ->
                        tracing.notes.add("Left out: " + count + " of the element '" + element + "'."));
        tracing.rings(found.shapes());
        if (tracing.pieces.isEmpty() && tracing.findings.isEmpty()) {
            throw source.refused(
                    "", "there is no outline in the file: no closed shape, and no lines that meet end to end");
        }
        tracing.grain();
        return new Traced(new Draft(name, tracing.pieces, List.of()), tracing.findings, tracing.notes);
    }

    // ------------------------------------------------------------------------------------------------ rings

    /** A closed outline and where it stands in the file; single when one closed shape makes it. */
    private record Ring(List<Strand> strands, boolean single) {
        double area() {
            return strands.stream()
                    .flatMap(strand -> strand.curves().stream())
                    .mapToDouble(Curve::area)
                    .sum();
        }

        String place() {
            return strands.get(0).place();
        }
    }

    /** The open lines of one group. */
    private record Lines(String group, boolean ownGroup, List<Strand> strands) {}

    /** Closed shapes are pieces of their own; open ones make a piece with the others of their group. */
    private void rings(List<SvgShape> shapes) {
        Map<Integer, Lines> open = new LinkedHashMap<>();
        for (SvgShape shape : shapes) {
            List<Ring> closed = new ArrayList<>();
            for (Subpath subpath : shape.subpaths()) {
                Optional<Strand> strand = strand(shape, subpath);
                Optional<Ring> ring = strand.flatMap(line -> closed(line, subpath.closed()));
                ring.ifPresent(closed::add);
                strand.filter(line -> ring.isEmpty())
                        .ifPresent(line -> lines(shape, open).add(line));
            }
            if (!closed.isEmpty()) {
                piece(shape.id().isEmpty() ? shape.groupName() : shape.id(), closed);
            }
        }
        open.values().forEach(this::chains);
    }

    private List<Strand> lines(SvgShape shape, Map<Integer, Lines> open) {
        return shape.grain()
                ? grains
                : open.computeIfAbsent(
                                shape.group(),
                                group -> new Lines(shape.groupName(), shape.ownGroup(), new ArrayList<>()))
                        .strands();
    }

    /** A subpath as curves; nothing when it is a single point. */
    private Optional<Strand> strand(SvgShape shape, Subpath subpath) {
        return placed(shape.place(), () -> {
            List<Curve> curves = subpath.strokes().stream()
                    .flatMap(stroke -> stroke.curves(options.arcs()).stream())
                    .toList();
            return curves.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Strand(shape.id(), shape.role(), curves, shape.place()));
        });
    }

    /** A strand that ends where it starts, or says that it is joined there. */
    private Optional<Ring> closed(Strand strand, boolean joined) {
        double gap = strand.start().distance(strand.end());
        boolean loop = gap <= options.gap()
                && strand.curves().stream()
                        .anyMatch(curve -> curve.at(0.5).distance(strand.start()) > options.gap()
                                || curve.end().distance(strand.start()) > options.gap());
        if (loop) {
            return Optional.of(new Ring(List.of(strand), true));
        }
        if (!joined) {
            return Optional.empty();
        }
        List<Curve> curves = new ArrayList<>(strand.curves());
        curves.addAll(new Stroke.Line(strand.end(), strand.start()).curves(options.arcs()));
        return Optional.of(new Ring(List.of(new Strand(strand.name(), strand.role(), curves, strand.place())), true));
    }

    /** The open lines of one group, chained end to end. */
    private void chains(Lines lines) {
        source.requireParts(lines.strands().get(0).place(), lines.strands());
        List<Strand> free = new ArrayList<>(lines.strands());
        List<Ring> rings = new ArrayList<>();
        while (!free.isEmpty()) {
            source.requireTime(free.get(0).place());
            chain(free, lines.group()).ifPresent(rings::add);
        }
        if (lines.ownGroup() && !rings.isEmpty()) {
            piece(lines.group(), rings);
        } else {
            rings.forEach(ring -> piece("", List.of(ring)));
        }
    }

    /** Follows the first free strand from end to end until it comes back to its start. */
    private Optional<Ring> chain(List<Strand> free, String group) {
        List<Strand> chain = new ArrayList<>();
        chain.add(free.remove(0));
        boolean turned = false;
        while (true) {
            Vector2D end = chain.get(chain.size() - 1).end();
            double toStart = chain.size() == 1
                    ? Double.POSITIVE_INFINITY
                    : end.distance(chain.get(0).start());
            Optional<Strand> next = nearest(free, end);
            double toNext = next.map(strand -> reach(strand, end)).orElse(Double.POSITIVE_INFINITY);
            if (toStart <= options.gap() && toStart <= toNext) {
                return Optional.of(new Ring(chain, false));
            }
            if (toNext <= options.gap()) {
                Strand taken = next.orElseThrow();
                free.remove(taken);
                chain.add(taken.start().distance(end) <= taken.end().distance(end) ? taken : taken.reversed());
            } else if (!turned) {
                turned = true;
                chain = turned(chain);
            } else {
                open(chain, free, group);
                return Optional.empty();
            }
        }
    }

    private static List<Strand> turned(List<Strand> chain) {
        List<Strand> turned = new ArrayList<>();
        chain.forEach(strand -> turned.add(0, strand.reversed()));
        return turned;
    }

    private static Optional<Strand> nearest(List<Strand> free, Vector2D end) {
        return free.stream().min(Comparator.comparingDouble(strand -> reach(strand, end)));
    }

    private static double reach(Strand strand, Vector2D end) {
        return Math.min(strand.start().distance(end), strand.end().distance(end));
    }

    /** A place where a chain ends, and the nearest end of another line or of its own. */
    private record Gap(Strand one, Vector2D at, Strand other, double width) {}

    private void open(List<Strand> chain, List<Strand> free, String group) {
        Gap gap = Stream.of(gap(chain, free), gap(turned(chain), free))
                .min(Comparator.comparingDouble(Gap::width))
                .orElseThrow();
        findings.add(new Finding(
                Finding.Kind.OUTLINE_OPEN,
                (group.isEmpty() ? "" : "'" + group + "', ") + "between "
                        + gap.one().words() + " and " + gap.other().words() + " at " + point(gap.at()),
                Quantity.LENGTH,
                gap.width(),
                0,
                options.gap()));
    }

    private static Gap gap(List<Strand> chain, List<Strand> free) {
        Strand last = chain.get(chain.size() - 1);
        Gap toStart = new Gap(
                last, last.end(), chain.get(0), last.end().distance(chain.get(0).start()));
        return nearest(free, last.end())
                .map(next -> new Gap(last, last.end(), next, reach(next, last.end())))
                .filter(toNext -> toNext.width() < toStart.width())
                .orElse(toStart);
    }

    private static String point(Vector2D point) {
        return String.format(Locale.ROOT, "(%.1f, %.1f)", point.getX(), point.getY());
    }

    // ------------------------------------------------------------------------------------------------ pieces

    /** The largest ring is the piece. */
    private void piece(String name, List<Ring> rings) {
        Ring largest = rings.stream()
                .max(Comparator.comparingDouble(ring -> Math.abs(ring.area())))
                .orElseThrow();
        String called = name.isEmpty() ? unused() : name;
        if (!names.add(called)) {
            throw source.refused(largest.place(), "the name '" + called + "' stands twice");
        }
        if (rings.size() > 1) {
            findings.add(new Finding(Finding.Kind.SECOND_RING, "'" + called + "'", Quantity.COUNT, rings.size(), 1, 0));
        }
        if (largest.area() == 0) {
            throw source.refused(
                    largest.place(),
                    "the outline of '" + called
                            + "' encloses nothing, or as much to the left as to the right, like a bow-tie;"
                            + " draw its edges so that they meet at their ends only");
        }
        pieces.add(placed(largest.place(), () -> drawn(called, largest)));
        source.requireParts(largest.place(), pieces);
    }

    private String unused() {
        int number = 1;
        while (names.contains("piece " + number)) {
            number++;
        }
        return "piece " + number;
    }

    private Piece drawn(String name, Ring ring) {
        List<Strand> strands = joined(name, anticlockwise(ring));
        List<Strand> edges = named(ring.single() ? fromCorner(strands.get(0)) : cutAtCorners(strands));
        source.requireParts(ring.place(), edges);
        Drawing drawing = Drawing.of(name)
                .from(edges.get(0).start().getX(), edges.get(0).start().getY());
        for (Strand edge : edges) {
            drawing = drawing.edge(edge.name(), edge.role()).along(new CurvePath(edge.curves()));
        }
        return drawing.piece();
    }

    /** Whichever way it was drawn, so that edges run and are numbered the same way round. */
    private static List<Strand> anticlockwise(Ring ring) {
        return ring.area() > 0 ? ring.strands() : turned(ring.strands());
    }

    /** Moves the start of each strand on to the end of the one before it. */
    private List<Strand> joined(String name, List<Strand> strands) {
        List<Strand> joined = new ArrayList<>();
        for (int i = 0; i < strands.size(); i++) {
            Strand strand = strands.get(i);
            Strand before = strands.get((i + strands.size() - 1) % strands.size());
            double gap = before.end().distance(strand.start());
            if (gap > CurvePath.JOINT) {
                notes.add(String.format(
                        Locale.ROOT,
                        "Closed a gap of %.3f mm of '%s' at %s, between %s and %s.",
                        gap,
                        name,
                        point(strand.start()),
                        before.words(),
                        strand.words()));
                strand = strand.startingAt(before.end());
            }
            joined.add(strand);
        }
        return joined;
    }

    // ------------------------------------------------------------------------------------------------ corners

    private boolean corner(Curve one, Curve next) {
        Vector2D arriving = one.tangent(1);
        Vector2D leaving = next.tangent(0);
        return Math.abs(Math.atan2(arriving.signedArea(leaving), arriving.dot(leaving))) > options.corner();
    }

    /** The edges of one closed shape, from its first corner round to it again. They take their names from their number. */
    private List<Strand> fromCorner(Strand ring) {
        List<Curve> curves = ring.curves();
        int start = 0;
        while (start < curves.size()
                && !corner(curves.get((start + curves.size() - 1) % curves.size()), curves.get(start))) {
            start++;
        }
        List<Curve> turned = new ArrayList<>(curves.subList(start % curves.size(), curves.size()));
        turned.addAll(curves.subList(0, start % curves.size()));
        return cut(new Strand("", ring.role(), turned, ring.place()));
    }

    private List<Strand> cutAtCorners(List<Strand> strands) {
        List<Strand> edges = new ArrayList<>();
        for (Strand strand : strands) {
            List<Strand> parts = cut(strand);
            for (int i = 0; i < parts.size(); i++) {
                boolean numbered = parts.size() > 1 && !strand.name().isEmpty();
                String name = numbered ? strand.name() + " " + (i + 1) : strand.name();
                edges.add(new Strand(name, strand.role(), parts.get(i).curves(), strand.place()));
            }
        }
        return edges;
    }

    private List<Strand> cut(Strand strand) {
        List<Strand> parts = new ArrayList<>();
        List<Curve> part = new ArrayList<>();
        for (Curve curve : strand.curves()) {
            if (!part.isEmpty() && corner(part.get(part.size() - 1), curve)) {
                parts.add(new Strand(strand.name(), strand.role(), part, strand.place()));
                part = new ArrayList<>();
            }
            part.add(curve);
        }
        parts.add(new Strand(strand.name(), strand.role(), part, strand.place()));
        return parts;
    }

    /** Edges without a name are numbered in order round the piece. */
    private List<Strand> named(List<Strand> edges) {
        Set<String> taken = new HashSet<>();
        for (Strand edge : edges) {
            if (!edge.name().isEmpty() && !taken.add(edge.name())) {
                throw source.refused(edge.place(), "the name '" + edge.name() + "' stands twice in one outline");
            }
        }
        List<Strand> named = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            Strand edge = edges.get(i);
            String number = "edge " + (i + 1);
            if (edge.name().isEmpty() && taken.contains(number)) {
                throw source.refused(edge.place(), "an edge without id would be '" + number + "', which is taken");
            }
            named.add(edge.name().isEmpty() ? new Strand(number, edge.role(), edge.curves(), edge.place()) : edge);
        }
        return named;
    }

    // ------------------------------------------------------------------------------------------------ grain

    /** A line of the class grain belongs to the piece in which its middle lies. */
    private void grain() {
        for (Strand line : grains) {
            Vector2D middle = line.start().lerp(line.end(), 0.5);
            Optional<Piece> piece = pieces.stream()
                    .filter(each -> placed(line.place(), () -> Inside.of(Paper.outline(each), middle, CurvePath.JOINT))
                            == Inside.Where.INSIDE)
                    .findFirst();
            if (piece.isEmpty()) {
                notes.add("Left out: the grain " + line.words() + " lies in no piece.");
            } else if (piece.get().grain().isPresent()) {
                throw source.refused(line.place(), "'" + piece.get().name() + "' has two grain lines");
            } else {
                pieces.set(pieces.indexOf(piece.get()), withGrain(piece.get(), line));
            }
        }
    }

    private Piece withGrain(Piece piece, Strand line) {
        Grain grain = placed(line.place(), () -> new Grain(line.start(), line.end()));
        return piece.grained(grain);
    }

    /** Gives a refusal by the library the place of the shape. */
    private <T> T placed(String place, Supplier<T> making) {
        source.requireTime(place);
        try {
            return making.get();
        } catch (FileException placed) {
            throw placed;
        } catch (IllegalArgumentException | DraftingException refusal) {
            throw new FileException(source.name(), place, refusal.getMessage(), refusal);
        }
    }
}
