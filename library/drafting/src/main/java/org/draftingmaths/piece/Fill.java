package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;

/** The gap of an opening made cloth, and made a gap again. */
final class Fill {

    /** A joint at which no edge had to be made one. */
    private static final Step.Joint NOTHING = new Step.Joint(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), 0, 0, 0, Isometry.NONE, List.of());

    private Fill() {}

    /**
     * A piece being filled: all that a joint changes.
     *
     * @param piece the piece, its panels without the two parts
     * @param one the border of the one part, between the two ends of the opening
     * @param other the border of the other part; empty when both legs lie on one
     * @param opening the opening, its mouths where they are now
     * @param joints the joints made so far
     */
    private record Work(Piece piece, List<Run> one, List<Run> other, Opening opening, List<Joint> joints) {

        /** The same with what is drawn across the last joint. */
        Work across(Optional<Run> run) {
            List<Joint> all = new ArrayList<>(joints);
            all.add(new Joint(all.remove(all.size() - 1).step(), run));
            return new Work(piece, one, other, opening, all);
        }
    }

    /** A joint of the ring, and the run of what is drawn across it. */
    private record Joint(Step.Joint step, Optional<Run> across) {}

    static Reworked fill(Piece piece, Opening opening) {
        String asked = "Fill '" + opening.name() + "'";
        requireOpen(opening, asked);
        Run before = whole(piece, opening, Leg.BEFORE, asked);
        Run after = whole(piece, opening, Leg.AFTER, asked);
        Panel one = panelWith(piece, before);
        Panel other = panelWith(piece, after);
        Work work = new Work(
                piece.withOpenings(
                        piece.openings().stream()
                                .filter(each -> !each.equals(opening))
                                .toList(),
                        piece.panels().stream()
                                .filter(panel -> !panel.equals(one) && !panel.equals(other))
                                .toList()),
                one.equals(other) ? around(one, before, after, asked) : one.onwardsFrom(before),
                one.equals(other) ? List.of() : other.onwardsFrom(after),
                opening,
                List.of());
        // A part ends where its ring would run into the leg: at the mouth, when it runs inwards along the before leg.
        work = joined(piece, work, opening, one.equals(other) || before.forward(), true, asked);
        if (!one.equals(other)) {
            work = joined(piece, work, opening, !before.forward(), false, asked);
        }
        Panel filled = new Panel(Join.Heal.ring(work.piece(), ring(work)), lines(one, other), darts(one, other));
        Piece whole = work.piece()
                .with(Stream.concat(work.piece().panels().stream(), Stream.of(filled))
                        .toList());
        Outlines.requireSimple(whole, asked);
        LineGap.Healed healed = LineGap.heal(
                whole,
                opening.name(),
                opening.before().transformed(before.motion()),
                opening.after().transformed(after.motion()));
        Piece done = healed.piece();
        Step step = new Step.Filled(
                opening,
                done.area() - piece.area(),
                before.motion(),
                after.motion(),
                placed(work),
                healed.joints(),
                piece.notches(),
                done.notches());
        return new Reworked(done, told(piece, done, Ledger.of(step)).then(healed.told()));
    }

    /** The joints with their places as they are now. */
    private static List<Step.Joint> placed(Work work) {
        List<Step.Joint> placed = new ArrayList<>();
        for (int k = 0; k < work.joints().size(); k++) {
            List<Run> arriving = k == 1 ? work.other() : work.one();
            List<Run> leaving = k == 1 || work.other().isEmpty() ? work.one() : work.other();
            Run last = arriving.get(arriving.size() - 1);
            Run first = leaving.get(0);
            placed.add(work.joints()
                    .get(k)
                    .step()
                    .at(
                            new Spot.On(last.border(), last.exit(), Optional.empty()),
                            new Spot.On(first.border(), first.entry(), Optional.empty())));
        }
        return placed;
    }

    private static void requireOpen(Opening opening, String asked) {
        boolean stitched = opening.mouth().use().stitched()
                || opening.farMouth().filter(far -> far.use().stitched()).isPresent();
        if (stitched) {
            throw new DraftingException(asked, "it is stitched or folded; leave it open first");
        }
    }

    private static Run whole(Piece piece, Opening opening, Leg leg, String asked) {
        return Panels.onlyRun(piece, opening.leg(leg))
                .orElseThrow(() -> new DraftingException(
                        asked, "another slash ends on a leg of '" + opening.name() + "'; undo that first"));
    }

    private static Panel panelWith(Piece piece, Run run) {
        return piece.panels().stream()
                .filter(panel -> panel.ring().contains(run))
                .findFirst()
                .orElseThrow();
    }

    /** The border of a part from the one side of a dart round to the other. */
    private static List<Run> around(Panel panel, Run before, Run after, String asked) {
        Run first = before.forward() ? before : after;
        Run second = before.forward() ? after : before;
        List<Run> rest = panel.onwardsFrom(second);
        if (!rest.get(rest.size() - 1).equals(first)) {
            throw new DraftingException(asked, "both its sides lie on one part; filling it would close it into a tube");
        }
        return rest.subList(0, rest.size() - 1);
    }

    private static List<Run> ring(Work work) {
        List<Run> ring = new ArrayList<>(work.one());
        work.joints().get(0).across().ifPresent(ring::add);
        if (work.joints().size() > 1) {
            ring.addAll(work.other());
            work.joints().get(1).across().ifPresent(ring::add);
        }
        return ring;
    }

    private static List<Stretch> lines(Panel one, Panel other) {
        return one.equals(other)
                ? one.lines()
                : Stream.concat(one.lines().stream(), other.lines().stream()).toList();
    }

    private static List<Laid> darts(Panel one, Panel other) {
        return one.equals(other)
                ? one.darts()
                : Stream.concat(one.darts().stream(), other.darts().stream()).toList();
    }

    /** Joins the two parts at one end of the opening: after the one (first) or after the other. */
    private static Work joined(Piece before, Work work, Opening opening, boolean atMouth, boolean first, String asked) {
        boolean lastJoint = !first;
        List<Run> arrivingPart = lastJoint ? work.other() : work.one();
        List<Run> leavingPart = lastJoint || work.other().isEmpty() ? work.one() : work.other();
        Run arriving = arrivingPart.get(arrivingPart.size() - 1);
        Run leaving = leavingPart.get(0);
        Vector2D from = work.piece().place(arriving).end();
        Vector2D to = work.piece().place(leaving).start();
        Optional<Mouth> mouth =
                atMouth ? Optional.of(work.opening().mouth()) : work.opening().farMouth();
        boolean wide = from.distance(to) > Panels.TOUCH;
        if (mouth.isEmpty() || !(mouth.get().border() instanceof Border.OfEdge)) {
            if (wide) {
                throw new DraftingException(asked, "nothing is drawn across its other end, which lies inside");
            }
            return with(work, new Joint(NOTHING, Optional.empty()), Optional.empty(), work.piece());
        }
        Leg entering = entering(before, opening, atMouth);
        Optional<CurvePath> across =
                wide ? Optional.of(Paper.drawn(before, opening, atMouth, entering, from, to)) : Optional.empty();
        return spliced(work, arriving, leaving, mouth.get(), across, asked);
    }

    /** The leg that the ring comes to at this end. */
    private static Leg entering(Piece piece, Opening opening, boolean atMouth) {
        boolean beforeInwards =
                Panels.onlyRun(piece, opening.leg(Leg.BEFORE)).orElseThrow().forward();
        return beforeInwards == atMouth ? Leg.BEFORE : Leg.AFTER;
    }

    /** The edge made one over the joint: its base goes on with what is drawn across and then as it lies beyond. */
    private static Work spliced(
            Work work, Run arriving, Run leaving, Mouth mouth, Optional<CurvePath> across, String asked) {
        Piece piece = work.piece();
        Border border = mouth.border();
        boolean forward = (arriving.border().equals(border) ? arriving : leaving).forward();
        Place place = Place.of(mouth, forward ? arriving : leaving, forward ? leaving : arriving);
        if (place.lower().isEmpty() && place.upper().isEmpty()) {
            if (across.isPresent()) {
                throw new DraftingException(asked, "no cloth of " + border.words() + " lies beside its mouth");
            }
            return with(work, new Joint(NOTHING, Optional.empty()), Optional.empty(), piece);
        }
        Edge edge = piece.edge(((Border.OfEdge) border).edge());
        Optional<CurvePath> drawn = across.map(path -> forward ? path : path.reversed());
        double width = drawn.map(CurvePath::length).orElse(0.0);
        Base base = Base.of(edge, place, drawn);
        Shift shift = new Shift(
                border,
                place.from(),
                place.to(),
                width,
                edge.length(),
                base.edge().length(),
                base.turn(),
                place.lower().isPresent());
        Optional<Run> run =
                drawn.map(path -> new Run(border, place.from(), place.from() + width, forward, base.motion()));
        Step.Joint step = new Step.Joint(
                Optional.empty(),
                Optional.empty(),
                Optional.of(edge),
                Optional.of(base.edge()),
                place.from(),
                place.to(),
                width,
                base.turn(),
                arcs(work, border, place.to()));
        Work shifted =
                with(work, new Joint(step, Optional.empty()), Optional.of(shift), shift.apply(piece, base.edge()));
        return shifted.across(run);
    }

    /** The base arcs of runs and mouths that lie beyond a joint. */
    private static List<Double> arcs(Work work, Border border, double to) {
        Stream<Run> runs = Stream.of(
                        work.piece().panels().stream().flatMap(panel -> panel.ring().stream()),
                        work.one().stream(),
                        work.other().stream())
                .flatMap(all -> all)
                .filter(run -> run.border().equals(border));
        Stream<Mouth> mouths = work.piece().openings().stream()
                .flatMap(each -> Stream.concat(Stream.of(each.mouth()), each.farMouth().stream()))
                .filter(mouth -> mouth.border().equals(border));
        return Stream.concat(
                        runs.flatMap(run -> Stream.of(run.from(), run.to())),
                        mouths.flatMap(mouth -> Stream.of(mouth.before(), mouth.after())))
                .filter(arc -> arc >= to)
                .distinct()
                .sorted()
                .toList();
    }

    /**
     * Where an edge is joined.
     *
     * @param from the base arc at which its lower stretch ends
     * @param to the base arc at which its upper stretch begins
     * @param lower the run just below, when it lies beside the joint
     * @param upper the run just above, when it lies beside the joint
     */
    private record Place(double from, double to, Optional<Run> lower, Optional<Run> upper) {

        static Place of(Mouth mouth, Run lower, Run upper) {
            double from = Math.min(mouth.before(), mouth.after());
            double to = Math.max(mouth.before(), mouth.after());
            return new Place(
                    from,
                    to,
                    Optional.of(lower).filter(run -> run.border().equals(mouth.border()) && run.to() == from),
                    Optional.of(upper).filter(run -> run.border().equals(mouth.border()) && run.from() == to));
        }
    }

    private static Work with(Work work, Joint joint, Optional<Shift> shift, Piece piece) {
        UnaryOperator<Run> runs = run -> shift.map(each -> each.apply(run)).orElse(run);
        UnaryOperator<Mouth> mouths =
                mouth -> shift.map(each -> each.apply(mouth)).orElse(mouth);
        List<Joint> joints = Stream.concat(
                        work.joints().stream()
                                .map(each ->
                                        new Joint(each.step(), each.across().map(runs))),
                        Stream.of(joint))
                .toList();
        return new Work(
                piece,
                work.one().stream().map(runs).toList(),
                work.other().stream().map(runs).toList(),
                shifted(work.opening(), mouths),
                joints);
    }

    /**
     * The new base of an edge.
     *
     * @param edge the edge
     * @param turn the isometry from its old base to the new, beyond the joint
     * @param motion the motion of what is drawn across
     */
    private record Base(Edge edge, AffineTransformMatrix2D turn, AffineTransformMatrix2D motion) {

        static Base of(Edge edge, Place place, Optional<CurvePath> across) {
            return place.lower()
                    .map(lower -> onLower(edge, place, lower, across))
                    .orElseGet(() -> onUpper(edge, place, place.upper().orElseThrow(), across));
        }

        private static Base onLower(Edge edge, Place place, Run lower, Optional<CurvePath> across) {
            AffineTransformMatrix2D back = lower.motion().inverse();
            CurvePath start = edge.base().between(0, place.from());
            CurvePath path =
                    across.map(drawn -> start.then(drawn.transformed(back))).orElse(start);
            if (place.to() == edge.length()) {
                return new Base(redrawn(edge, path), Isometry.NONE, lower.motion());
            }
            CurvePath rest = edge.base().between(place.to(), edge.length());
            AffineTransformMatrix2D turn = place.upper()
                    .map(upper -> upper.motion().premultiply(back))
                    .orElseGet(() -> AffineTransformMatrix2D.createTranslation(
                            rest.start().vectorTo(path.end())));
            return new Base(redrawn(edge, path.then(rest.transformed(turn))), turn, lower.motion());
        }

        /** What is drawn across belongs to the stretch beyond it; what comes before is another part's. */
        private static Base onUpper(Edge edge, Place place, Run upper, Optional<CurvePath> across) {
            CurvePath rest = edge.base().between(place.to(), edge.length());
            CurvePath tail = across.map(
                            path -> path.transformed(upper.motion().inverse()).then(rest))
                    .orElse(rest);
            if (place.from() == 0) {
                return new Base(redrawn(edge, tail), Isometry.NONE, upper.motion());
            }
            CurvePath path = edge.base().between(0, place.from());
            AffineTransformMatrix2D turn =
                    AffineTransformMatrix2D.createTranslation(tail.start().vectorTo(path.end()));
            return new Base(
                    redrawn(edge, path.then(tail.transformed(turn))),
                    turn,
                    upper.motion().multiply(turn.inverse()));
        }

        private static Edge redrawn(Edge edge, CurvePath path) {
            return new Edge(edge.name(), edge.role(), edge.allowance(), path);
        }
    }

    /**
     * How a joint shifts the arcs of its edge: what comes at or after {@code to} before comes {@code from + width} and more after it.
     *
     * @param edge the edge
     * @param from the base arc of the joint
     * @param to the base arc at which the edge went on
     * @param width the width drawn across
     * @param length the length of the base before
     * @param lengthAfter the length of the base after
     * @param turn the isometry from the old base to the new, beyond the joint
     * @param keepsLower whether a mark just at the joint lies beyond it, when nothing tells on which side
     */
    private record Shift(
            Border edge,
            double from,
            double to,
            double width,
            double length,
            double lengthAfter,
            AffineTransformMatrix2D turn,
            boolean keepsLower) {

        double arc(double arc) {
            return arc == length ? lengthAfter : from + width + (arc - to);
        }

        Run apply(Run run) {
            return run.border().equals(edge) && run.from() >= to
                    ? new Run(
                            edge,
                            arc(run.from()),
                            arc(run.to()),
                            run.forward(),
                            run.motion().multiply(turn.inverse()))
                    : run;
        }

        Mouth apply(Mouth mouth) {
            boolean beyond = mouth.before() > to || (mouth.before() == to && keepsLower);
            return mouth.border().equals(edge) && beyond
                    ? new Mouth(edge, arc(mouth.before()), arc(mouth.after()), mouth.use())
                    : mouth;
        }

        Notch apply(Notch notch) {
            boolean beyond = notch.arc() > to || (notch.arc() == to && notch.beside() == Beside.AFTER);
            return edge.equals(new Border.OfEdge(notch.edge())) && beyond
                    ? new Notch(notch.edge(), arc(notch.arc()), notch.beside())
                    : notch;
        }

        Piece apply(Piece piece, Edge redrawn) {
            return new Piece(
                    piece.name(),
                    replaced(piece.edges(), redrawn),
                    openings(piece, this::apply),
                    piece.panels().stream()
                            .map(panel -> panel.with(
                                    panel.ring().stream().map(this::apply).toList()))
                            .toList(),
                    piece.levels(),
                    piece.insideDarts(),
                    piece.notches().stream().map(this::apply).toList(),
                    piece.grain());
        }
    }

    private static List<Edge> replaced(List<Edge> edges, Edge redrawn) {
        return edges.stream()
                .map(each -> each.name().equals(redrawn.name()) ? redrawn : each)
                .toList();
    }

    private static List<Opening> openings(Piece piece, UnaryOperator<Mouth> shift) {
        return piece.openings().stream().map(each -> shifted(each, shift)).toList();
    }

    private static Opening shifted(Opening opening, UnaryOperator<Mouth> shift) {
        return new Opening(
                opening.name(),
                shift.apply(opening.mouth()),
                opening.farMouth().map(shift),
                opening.before(),
                opening.after());
    }

    private static Ledger told(Piece before, Piece after, Ledger done) {
        Ledger ledger = done;
        for (Edge edge : before.edges()) {
            Edge now = after.edge(edge.name());
            if (!now.equals(edge)) {
                ledger = ledger.then(
                        new Change("length of '" + edge.name() + "'", Quantity.LENGTH, edge.length(), now.length()));
            }
        }
        for (LevelLine line : before.levels()) {
            LevelLine now = after.level(line.name());
            if (!now.equals(line)) {
                ledger = ledger.then(new Change(
                        "length of the line '" + line.name() + "'",
                        Quantity.LENGTH,
                        onCloth(before, line.name()),
                        onCloth(after, line.name())));
            }
        }
        return ledger.then(new Change("net area", Quantity.AREA, before.area(), after.area()));
    }

    /** A line is drawn as long as one likes; what can be measured of it is what lies on the cloth. */
    private static double onCloth(Piece piece, String line) {
        return piece.panels().stream()
                .flatMap(panel -> panel.lines().stream())
                .filter(stretch -> stretch.line().equals(line))
                .mapToDouble(stretch -> stretch.to() - stretch.from())
                .sum();
    }

    // ------------------------------------------------------------------------------------------------ undo

    static Piece undo(Piece piece, Step.Filled filled) {
        String asked = "Empty '" + filled.opening().name() + "' again";
        requireUnchanged(piece, filled, asked);
        Piece parted = LineGap.undo(piece, filled.lines(), asked);
        for (Step.Joint joint : filled.joints()) {
            parted = splitAt(
                    splitAt(parted, joint.arriving().orElseThrow()),
                    joint.leaving().orElseThrow());
        }
        Panel whole = parted.panels().stream()
                .filter(panel -> filled.joints().stream()
                        .allMatch(joint -> ending(panel.ring(), joint) >= 0 && beginning(panel.ring(), joint) >= 0))
                .findFirst()
                .orElseThrow(() -> Panels.changedSince(asked));
        return emptied(parted, whole, parts(whole.ring(), filled.joints()), filled);
    }

    private static void requireUnchanged(Piece piece, Step.Filled filled, String asked) {
        boolean edges = filled.joints().stream()
                .flatMap(joint -> joint.edgeAfter().stream())
                .map(Edge::name)
                .distinct()
                .allMatch(name -> piece.edge(name).equals(last(filled, name)));
        if (!edges || !piece.notches().equals(filled.notchesAfter())) {
            throw Panels.changedSince(asked);
        }
    }

    private static Edge last(Step.Filled filled, String name) {
        return filled.joints().stream()
                .flatMap(joint -> joint.edgeAfter().stream())
                .filter(edge -> edge.name().equals(name))
                .reduce((one, other) -> other)
                .orElseThrow();
    }

    private static Piece splitAt(Piece piece, Spot.On spot) {
        return piece.with(piece.panels().stream()
                .map(panel -> panel.with(panel.ring().stream()
                        .flatMap(run -> splitAt(run, spot.border(), spot.arc()))
                        .toList()))
                .toList());
    }

    private static Stream<Run> splitAt(Run run, Border border, double arc) {
        if (!run.border().equals(border) || arc <= run.from() || arc >= run.to()) {
            return Stream.of(run);
        }
        Run lower = run.part(run.from(), arc);
        Run upper = run.part(arc, run.to());
        return run.forward() ? Stream.of(lower, upper) : Stream.of(upper, lower);
    }

    /** Which run of a ring ends at a joint, or -1. */
    private static int ending(List<Run> ring, Step.Joint joint) {
        Spot.On spot = joint.arriving().orElseThrow();
        return IntStream.range(0, ring.size())
                .filter(i -> ring.get(i).border().equals(spot.border())
                        && ring.get(i).exit() == spot.arc())
                .findFirst()
                .orElse(-1);
    }

    /** Which run of a ring begins at a joint, or -1. */
    private static int beginning(List<Run> ring, Step.Joint joint) {
        Spot.On spot = joint.leaving().orElseThrow();
        return IntStream.range(0, ring.size())
                .filter(i -> ring.get(i).border().equals(spot.border())
                        && ring.get(i).entry() == spot.arc())
                .findFirst()
                .orElse(-1);
    }

    /** The stretches of the ring between the joints, what was drawn across left out. */
    private static List<List<Run>> parts(List<Run> ring, List<Step.Joint> joints) {
        List<List<Run>> parts = new ArrayList<>();
        for (int k = 0; k < joints.size(); k++) {
            int from = beginning(ring, joints.get((k + joints.size() - 1) % joints.size()));
            int to = ending(ring, joints.get(k));
            List<Run> part = new ArrayList<>();
            for (int i = from; i != to; i = (i + 1) % ring.size()) {
                part.add(ring.get(i));
            }
            part.add(ring.get(to));
            parts.add(part);
        }
        return parts;
    }

    private static Piece emptied(Piece piece, Panel whole, List<List<Run>> parts, Step.Filled filled) {
        Opening opening = filled.opening();
        Piece bare = piece.with(
                piece.panels().stream().filter(panel -> !panel.equals(whole)).toList());
        List<List<Run>> rings = parts;
        for (int k = filled.joints().size() - 1; k >= 0; k--) {
            Step.Joint joint = filled.joints().get(k);
            if (joint.edge().isPresent()) {
                Back back = Back.of(joint);
                bare = back.apply(bare, joint.edge().get());
                rings = rings.stream()
                        .map(ring -> ring.stream().map(back::apply).toList())
                        .toList();
            }
        }
        boolean beforeInwards = beforeInwards(bare, rings, filled);
        Run before = new Run(opening.leg(Leg.BEFORE), 0, opening.before().length(), beforeInwards, filled.before());
        Run after = new Run(opening.leg(Leg.AFTER), 0, opening.after().length(), !beforeInwards, filled.after());
        List<Opening> openings =
                Stream.concat(bare.openings().stream(), Stream.of(opening)).toList();
        Piece open = bare.withOpenings(openings, bare.panels()).withNotches(filled.notches());
        List<Panel> panels = new ArrayList<>(open.panels());
        panels.addAll(
                rings.size() == 1
                        ? List.of(whole.with(
                                append(rings.get(0), beforeInwards ? List.of(before, after) : List.of(after, before))))
                        : dealtOut(
                                open,
                                whole,
                                append(rings.get(0), List.of(before)),
                                append(rings.get(1), List.of(after))));
        return open.with(panels);
    }

    /** The before leg runs inwards where the first part ends at its mouth. */
    private static boolean beforeInwards(Piece piece, List<List<Run>> rings, Step.Filled filled) {
        List<Run> first = rings.get(0);
        Vector2D end = piece.place(first.get(first.size() - 1)).end();
        CurvePath before = filled.opening().before().transformed(filled.before());
        CurvePath after = filled.opening().after().transformed(filled.after());
        Vector2D elsewhere = rings.size() == 1 ? after.start() : before.end();
        return end.distance(before.start()) < end.distance(elsewhere);
    }

    private static List<Run> append(List<Run> ring, List<Run> more) {
        return Stream.concat(ring.stream(), more.stream()).toList();
    }

    private static List<Panel> dealtOut(Piece piece, Panel whole, List<Run> one, List<Run> other) {
        CurvePath border = piece.place(one);
        List<Stretch> lines = whole.lines().stream()
                .filter(line -> Outlines.holds(border, piece.place(line)))
                .toList();
        List<Laid> darts = whole.darts().stream()
                .filter(dart -> Outlines.holds(border, piece.place(dart)))
                .toList();
        return List.of(
                new Panel(one, lines, darts),
                new Panel(
                        other,
                        whole.lines().stream()
                                .filter(line -> !lines.contains(line))
                                .toList(),
                        whole.darts().stream()
                                .filter(dart -> !darts.contains(dart))
                                .toList()));
    }

    /**
     * The way back of a shift.
     *
     * @param edge the edge
     * @param arc from an arc after to the arc before
     * @param after the base arc after from which it holds
     * @param turn the isometry from the old base to the new
     */
    private record Back(Border edge, DoubleUnaryOperator arc, double after, AffineTransformMatrix2D turn) {

        static Back of(Step.Joint joint) {
            double beyond = joint.from() + joint.width();
            double length = joint.edge().orElseThrow().length();
            double lengthAfter = joint.edgeAfter().orElseThrow().length();
            DoubleUnaryOperator arc =
                    at -> at == lengthAfter ? length : exact(joint.arcs(), joint.to() + (at - beyond));
            return new Back(new Border.OfEdge(joint.edge().orElseThrow().name()), arc, beyond, joint.turn());
        }

        private static double exact(List<Double> arcs, double arc) {
            return arcs.stream()
                    .filter(each -> Math.abs(each - arc) <= Panels.TOUCH)
                    .findFirst()
                    .orElse(arc);
        }

        Run apply(Run run) {
            return run.border().equals(edge) && run.from() >= after
                    ? new Run(
                            edge,
                            arc.applyAsDouble(run.from()),
                            arc.applyAsDouble(run.to()),
                            run.forward(),
                            run.motion().multiply(turn))
                    : run;
        }

        Mouth apply(Mouth mouth) {
            return mouth.border().equals(edge) && mouth.before() >= after
                    ? new Mouth(edge, arc.applyAsDouble(mouth.before()), arc.applyAsDouble(mouth.after()), mouth.use())
                    : mouth;
        }

        Piece apply(Piece piece, Edge was) {
            return new Piece(
                    piece.name(),
                    replaced(piece.edges(), was),
                    openings(piece, this::apply),
                    piece.panels().stream()
                            .map(panel -> panel.with(
                                    panel.ring().stream().map(this::apply).toList()))
                            .toList(),
                    piece.levels(),
                    piece.insideDarts(),
                    piece.notches(),
                    piece.grain());
        }
    }
}
