package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.check.Checks;
import org.draftingmaths.check.ClosedGirth;
import org.draftingmaths.check.DartLimits;
import org.draftingmaths.check.DraftLimits;
import org.draftingmaths.check.PrintedPair;
import org.draftingmaths.contour.SideSeams;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.SetLength;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.finish.Facing;
import org.draftingmaths.finish.Facings;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Finding.Kind;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Grain;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.LegEnds;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Redraw.Marks;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;

/**
 * A library of faults, each planted into a clean bodice with neck facings in every women's size of two published charts. Each must be found with its kind, at
 * its place, with the magnitude with which it was planted, and nothing else with it that does not follow from it; faults below the tolerance stay
 * silent; the clean drafts are silent. The confusion table is written to the module's target folder.
 */
class FaultLibraryTest {

    private static final double TOLERANCE = Checks.SEAM_TOLERANCE;

    /**
     * One fault.
     *
     * @param name what was done wrong
     * @param kind as what it is to be found
     * @param where a part of the place that is to be told
     * @param magnitude by how much the figure is to be off, measured less expected, in mm, radians or a count, or nothing where only kind and place
     *     are asked
     * @param within how near to that
     * @param brings other kinds that follow from it
     * @param plant how it is planted
     */
    private record Fault(
            String name,
            Kind kind,
            String where,
            Optional<Double> magnitude,
            double within,
            List<Kind> brings,
            UnaryOperator<Draft> plant) {

        boolean isToldBy(Finding finding) {
            return finding.kind() == kind
                    && finding.where().contains(where)
                    && magnitude
                            .filter(off -> Math.abs(finding.excess() - off) > Math.max(within, 1e-12))
                            .isEmpty();
        }

        /** As what a finding counts. */
        String column(Finding finding) {
            return finding.kind() == kind
                    ? "itself"
                    : (brings.contains(finding.kind()) ? "brought " : INVENTED) + finding.kind();
        }
    }

    private static final String INVENTED = "invented ";

    private static Fault fault(
            String name,
            Kind kind,
            String where,
            double magnitude,
            double within,
            UnaryOperator<Draft> plant,
            Kind... brings) {
        return new Fault(name, kind, where, Optional.of(magnitude), within, List.of(brings), plant);
    }

    private static Fault fault(String name, Kind kind, String where, UnaryOperator<Draft> plant, Kind... brings) {
        return new Fault(name, kind, where, Optional.empty(), 0, List.of(brings), plant);
    }

    private static Draft clean(Measurements body) {
        Draft block = TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft();
        Piece front = Darts.rotate(block.piece("front"), "bust dart", Spot.on("side seam", 120), "side dart")
                .piece();
        Draft bodice = block.with(notched(front)).with(notched(block.piece("back")));
        Facing neck = Facings.separate(
                bodice,
                "neck facing",
                List.of(new Facings.On("front", "neckline"), new Facings.On("back", "neckline")),
                55);
        List<Piece> pieces = new ArrayList<>(bodice.pieces());
        pieces.addAll(neck.pieces());
        List<Seam> seams = new ArrayList<>(bodice.seams());
        seams.addAll(neck.joins());
        for (String piece : List.of("front", "back")) {
            seams.add(Seam.flat(
                    piece + " neck",
                    Seam.Mate.of(piece, "neckline"),
                    Seam.Mate.of(piece + " neck facing", "neckline")));
        }
        return new Draft("bodice", pieces, seams);
    }

    private static Piece notched(Piece piece) {
        return piece.notched(new Notch("side seam", 60, Beside.BEFORE));
    }

    /** The usual limits, but that one dart may be as wide as the largest sizes have it, where the check would truly say: divide it. */
    private static List<Finding> found(Draft draft) {
        DartLimits wide = new DartLimits(Math.toRadians(30), Map.of("waist", 90.0), 45, 6, Math.toRadians(8), 0.75);
        return Checks.all(draft, TOLERANCE, DraftLimits.COMMON.with(wide));
    }

    private static Draft on(Draft draft, String piece, UnaryOperator<Piece> change) {
        return draft.with(change.apply(draft.piece(piece)));
    }

    // ------------------------------------------------------------------------------------------------ ways to plant

    /** The back's side seam longer at the waist, straight on; the waist carried down with its last handle. */
    private static Piece sideLonger(Piece back, double by) {
        CurvePath side = Paper.edge(back, "side seam");
        CurvePath waist = Redraw.last(back, "waist");
        Vector2D corner = side.start().subtract(side.startTangent().multiply(by));
        CurvePath longer =
                by > 0 ? CurvePath.polyline(corner, side.start()).then(side) : side.between(-by, side.length());
        return Redraw.edges(
                        back,
                        Map.of("side seam", longer, "waist", carried(waist, longer.start())),
                        Map.of("side seam", Marks.FROM_START, "waist", Marks.FROM_START))
                .piece();
    }

    private static CurvePath carried(CurvePath line, Vector2D end) {
        List<Curve> curves = new ArrayList<>(line.curves());
        Curve last = curves.remove(curves.size() - 1);
        Vector2D shift = last.end().vectorTo(end);
        Vector2D one = last.start().add(last.derivative(0).multiply(1.0 / 3));
        Vector2D two = last.end().subtract(last.derivative(1).multiply(1.0 / 3));
        curves.add(new Cubic(last.start(), one, two.add(shift), end));
        return new CurvePath(curves);
    }

    /** One edge's end turned by an angle about its own end: the last handle swings. */
    private static Piece turned(Piece piece, String edge, boolean atEnd, double angle) {
        CurvePath own = Paper.edge(piece, edge);
        CurvePath line = atEnd ? own : own.reversed();
        List<Curve> curves = new ArrayList<>(line.curves());
        Cubic last = (Cubic) curves.remove(curves.size() - 1);
        Vector2D handle =
                AffineTransformMatrix2D.createRotation(last.end(), angle).apply(last.endHandle());
        curves.add(new Cubic(last.start(), last.startHandle(), handle, last.end()));
        CurvePath swung = new CurvePath(curves);
        return Redraw.edges(piece, Map.of(edge, atEnd ? swung : swung.reversed()))
                .piece();
    }

    /** An edge longer by its curve alone, its ends and directions the same. */
    private static Piece fuller(Piece piece, String edge, double by) {
        CurvePath own = Paper.edge(piece, edge);
        return Redraw.edges(piece, Map.of(edge, SetLength.of(own, own.length() + by)))
                .piece();
    }

    private static Piece notchMoved(Piece piece, double by) {
        Piece moved = piece.unnotched("side seam");
        for (Notch notch : piece.notches()) {
            if (notch.edge().equals("side seam")) {
                moved = moved.notched(new Notch(notch.edge(), notch.arc() + by, notch.beside()));
            }
        }
        return moved;
    }

    /** One leg of a dart longer, along its line; the seam beside it drawn straight to it. */
    private static Piece legLonger(Piece piece, String dart, double by) {
        CurvePath before = LegEnds.seam(piece, dart, Leg.BEFORE);
        CurvePath after = LegEnds.seam(piece, dart, Leg.AFTER);
        Vector2D tip = org.draftingmaths.piece.Measured.tip(piece, dart);
        Vector2D end = after.start().add(tip.directionTo(after.start()).multiply(by));
        return LegEnds.move(piece, dart, before, carried(after.reversed(), end).reversed())
                .piece();
    }

    /** An upright grain line of a length beside the centre, turned about its middle. */
    private static Piece grainTurned(Piece piece, double length, double degrees) {
        Vector2D middle = Vector2D.of(40, 130);
        Vector2D half = Vector2D.of(0, length / 2);
        AffineTransformMatrix2D turn = AffineTransformMatrix2D.createRotation(middle, Math.toRadians(degrees));
        return piece.grained(new Grain(turn.apply(middle.subtract(half)), turn.apply(middle.add(half))));
    }

    /** An edge whose first half arrives in its middle turned by an angle. */
    private static Piece cornered(Piece piece, String edge, double angle) {
        CurvePath own = Paper.edge(piece, edge);
        double half = own.length() / 2;
        CurvePath cornered = swung(own.between(0, half), angle).then(own.between(half, own.length()));
        return Redraw.edges(piece, Map.of(edge, cornered)).piece();
    }

    /** The back alone, as if its mate were like it. */
    private static Piece takenIn(Draft draft, double by) {
        Piece back = draft.piece("back");
        Seam side = Seam.flat("side", Seam.Mate.of("back", "side seam"), Seam.Mate.of("twin", "side seam"));
        Draft twins = new Draft("twins", List.of(back, back.named("twin")), List.of(side));
        return SideSeams.takeIn(twins, "side", Length.mm(0), Length.mm(by))
                .front()
                .piece();
    }

    /** The waist beside a dart swung outwards at both legs: a corner of twice the angle when it is folded. */
    private static Piece kinked(Piece piece, String dart, double angle) {
        CurvePath before = swung(LegEnds.seam(piece, dart, Leg.BEFORE), angle);
        CurvePath after =
                swung(LegEnds.seam(piece, dart, Leg.AFTER).reversed(), -angle).reversed();
        return LegEnds.move(piece, dart, before, after).piece();
    }

    private static CurvePath swung(CurvePath line, double angle) {
        List<Curve> curves = new ArrayList<>(line.curves());
        Curve last = curves.remove(curves.size() - 1);
        Vector2D one = last.start().add(last.derivative(0).multiply(1.0 / 3));
        Vector2D two = last.end().subtract(last.derivative(1).multiply(1.0 / 3));
        curves.add(new Cubic(
                last.start(),
                one,
                AffineTransformMatrix2D.createRotation(last.end(), angle).apply(two),
                last.end()));
        return new CurvePath(curves);
    }

    private static Draft held(Draft draft, String seam, int interval, double surplus, String reason) {
        List<Seam> seams = draft.seams().stream()
                .map(each -> each.name().equals(seam)
                        ? new Seam(
                                each.name(),
                                each.first(),
                                each.second(),
                                List.of(new Seam.Held(interval, surplus, Seam.How.EASE, reason)))
                        : each)
                .toList();
        return new Draft(draft.name(), draft.pieces(), seams);
    }

    // ------------------------------------------------------------------------------------------------ the library

    /**
     * The signs follow from what each check measures, less what it expects. Lengths of a seam: the first side less its ease, less the second; front
     * before back, the garment before its facing. Notches: those of the first side less those of the second. Legs: the after leg less the before leg.
     * Lines and folds: the angles inside the cloth less half a turn, or less a right angle. All pieces are drawn anticlockwise with the centre on the
     * left, so an edge that leaves a corner turned anticlockwise narrows the angle inside, and one that arrives so widens it.
     */
    private static List<Fault> faults() {
        List<Fault> faults = new ArrayList<>();
        for (double by : new double[] {0.8, 1.5, 4, 8, -0.8, -1.5, -4}) {
            faults.add(fault(
                    "back side seam " + by + " mm longer",
                    Kind.SEAM_LENGTHS_DIFFER,
                    "seam 'side'",
                    -by,
                    1e-6,
                    draft -> on(draft, "back", back -> sideLonger(back, by))));
        }
        for (double by : new double[] {0.7, 2, 6, 12, -0.7, -2, -6, -12}) {
            faults.add(fault(
                    "notch of the back " + by + " mm along",
                    Kind.SEAM_LENGTHS_DIFFER,
                    "notch interval 1 of 2",
                    -by,
                    1e-6,
                    draft -> on(draft, "back", back -> notchMoved(back, by))));
        }
        faults.add(fault(
                "notch of the back forgotten",
                Kind.NOTCHES_UNPARTNERED,
                "seam 'side'",
                1,
                0,
                draft -> on(draft, "back", back -> back.unnotched("side seam"))));
        for (double surplus : new double[] {6, 3}) {
            faults.add(fault(
                    surplus + " mm of ease on the shoulder, nobody says where",
                    Kind.FULLNESS_UNBOUNDED,
                    "seam 'shoulder'",
                    surplus,
                    1e-9,
                    draft -> held(draft, "shoulder", 1, surplus, ""),
                    Kind.SEAM_LENGTHS_DIFFER));
        }
        faults.add(fault(
                "one notch too many on the front",
                Kind.NOTCHES_UNPARTNERED,
                "seam 'side'",
                1,
                0,
                draft -> on(draft, "front", front -> front.notched(new Notch("side seam", 30, Beside.BEFORE)))));
        for (double by : new double[] {0.8, 2}) {
            for (String piece : List.of("front", "back")) {
                faults.add(fault(
                        piece + " neckline " + by + " mm longer after the facing was traced",
                        Kind.SEAM_LENGTHS_DIFFER,
                        "seam '" + piece + " neck'",
                        by,
                        1e-6,
                        draft -> on(draft, piece, each -> fuller(each, "neckline", by))));
            }
        }
        faults.add(fault(
                "facing of the front neck 3 mm longer",
                Kind.SEAM_LENGTHS_DIFFER,
                "seam 'front neck'",
                -3,
                1e-6,
                draft -> on(draft, "front neck facing", each -> fuller(each, "neckline", 3))));
        for (double surplus : new double[] {1, 3, -2}) {
            faults.add(fault(
                    "ease of " + surplus + " mm declared on a shoulder that has none",
                    Kind.SEAM_LENGTHS_DIFFER,
                    "seam 'shoulder'",
                    -surplus,
                    1e-6,
                    draft -> held(draft, "shoulder", 1, surplus, "evenly")));
        }
        faults.add(fault(
                "ease declared for an interval that is not there",
                Kind.EASE_NOWHERE,
                "seam 'shoulder'",
                4,
                0,
                draft -> held(draft, "shoulder", 5, 3, "evenly")));
        for (double degrees : new double[] {0.7, 2, 5}) {
            double angle = Math.toRadians(degrees);
            faults.add(fault(
                    "front neckline " + degrees + " degrees off square at the fold",
                    Kind.FOLD_NOT_SQUARE,
                    "'neckline'",
                    angle,
                    1e-9,
                    draft -> on(draft, "front", front -> turned(front, "neckline", true, angle)),
                    Kind.SEAM_LENGTHS_DIFFER));
            faults.add(fault(
                    "back neckline " + degrees + " degrees off square at the fold",
                    Kind.FOLD_NOT_SQUARE,
                    "'neckline'",
                    -angle,
                    1e-9,
                    draft -> on(draft, "back", back -> turned(back, "neckline", true, -angle)),
                    Kind.SEAM_LENGTHS_DIFFER));
        }
        for (double degrees : new double[] {1.3, 3, 6}) {
            double angle = Math.toRadians(degrees);
            faults.add(fault(
                    "front neckline " + degrees + " degrees turned at the shoulder",
                    Kind.LINE_BREAKS,
                    "at seam 'shoulder'",
                    -angle,
                    1e-9,
                    draft -> on(draft, "front", front -> turned(front, "neckline", false, angle)),
                    Kind.SEAM_LENGTHS_DIFFER));
            faults.add(fault(
                    "back neckline " + degrees + " degrees turned at the shoulder",
                    Kind.LINE_BREAKS,
                    "at seam 'shoulder'",
                    angle,
                    1e-9,
                    draft -> on(draft, "back", back -> turned(back, "neckline", false, -angle)),
                    Kind.SEAM_LENGTHS_DIFFER));
            faults.add(fault(
                    "back armhole " + degrees + " degrees turned at the underarm",
                    Kind.LINE_BREAKS,
                    "at seam 'side'",
                    -angle,
                    1e-9,
                    draft -> on(draft, "back", back -> turned(back, "armhole", false, angle))));
            faults.add(fault(
                    "front armhole " + degrees + " degrees turned at the shoulder",
                    Kind.LINE_BREAKS,
                    "at seam 'shoulder'",
                    angle,
                    1e-9,
                    draft -> on(draft, "front", front -> turned(front, "armhole", true, angle))));
        }
        faults.add(fault(
                "grain line of the front beside the piece",
                Kind.GRAIN_OUTSIDE,
                "'front'",
                100,
                1e-6,
                draft -> on(
                        draft,
                        "front",
                        front -> front.grained(new Grain(Vector2D.of(-20, 50), Vector2D.of(-20, 150))))));
        faults.add(fault(
                "grain line of the back half outside",
                Kind.GRAIN_OUTSIDE,
                "'back'",
                50,
                3,
                draft -> on(
                        draft, "back", back -> back.grained(new Grain(Vector2D.of(40, -50), Vector2D.of(40, 100))))));
        for (double degrees : new double[] {1, 3, 8, -3, -8}) {
            // The angle to the fold is taken without its sign and is at most half a turn, from which either way only
            // takes away.
            faults.add(fault(
                    "grain of the front turned by " + degrees + " degrees",
                    Kind.GRAIN_TURNED,
                    "'front', grain to 'centre front'",
                    -Math.toRadians(Math.abs(degrees)),
                    1e-9,
                    draft -> on(draft, "front", front -> grainTurned(front, 120, degrees)),
                    Kind.SEAM_UNBALANCED));
        }
        for (double degrees : new double[] {45, -45}) {
            faults.add(fault(
                    "the back on the bias and on its fold, " + degrees + " degrees",
                    Kind.FOLD_ON_BIAS,
                    "'back', grain to 'centre back'",
                    draft -> on(draft, "back", back -> grainTurned(back, 40, degrees)),
                    Kind.SEAM_UNBALANCED));
        }
        for (double degrees : new double[] {4, 12, -4, -12}) {
            faults.add(fault(
                    "a corner of " + degrees + " degrees within the armhole of the back",
                    Kind.EDGE_CORNER,
                    "'armhole' of 'back'",
                    Math.toRadians(Math.abs(degrees)),
                    1e-9,
                    draft -> on(draft, "back", back -> cornered(back, "armhole", Math.toRadians(degrees)))));
        }
        for (double by : new double[] {6, 12, -6}) {
            faults.add(fault(
                    "the back alone taken in by " + by + " mm under the arm",
                    Kind.SEAM_UNBALANCED,
                    "seam 'side'",
                    draft -> draft.with(takenIn(draft, by)),
                    Kind.SEAM_LENGTHS_DIFFER,
                    Kind.LINE_BREAKS));
        }
        for (double by : new double[] {0.8, 2, 5}) {
            faults.add(fault(
                    "one leg of the back waist dart " + by + " mm longer",
                    Kind.LEGS_UNEQUAL,
                    "'waist dart'",
                    by,
                    1e-6,
                    draft -> on(draft, "back", back -> legLonger(back, "waist dart", by)),
                    Kind.POINT_OFF_BISECTOR,
                    Kind.EDGE_KINKS,
                    Kind.SEAM_LENGTHS_DIFFER));
        }
        for (double degrees : new double[] {2, 4, 8}) {
            faults.add(fault(
                    "waist of the back with a corner of " + 2 * degrees + " degrees at its dart",
                    Kind.EDGE_KINKS,
                    "'waist dart'",
                    Math.toRadians(2 * degrees),
                    Math.toRadians(0.1),
                    draft -> on(draft, "back", back -> kinked(back, "waist dart", -Math.toRadians(degrees)))));
        }
        faults.add(fault(
                "a dart too small to be sewn",
                Kind.DART_SMALL,
                "'crumb'",
                draft -> on(
                        draft,
                        "front",
                        front -> Darts.rotateToIntake(front, "side dart", Spot.on("armhole", 60), "crumb", 3)
                                .piece()),
                Kind.UNDERLAY_LONG,
                Kind.UNDERLAY_OVERRUNS,
                Kind.SLIVER,
                Kind.LINE_BREAKS));
        return faults;
    }

    /** Faults below the tolerances: nobody sews so finely, and nothing may be said. */
    private static List<UnaryOperator<Draft>> nearFaults() {
        return List.of(
                draft -> on(draft, "back", back -> sideLonger(back, 0.45)),
                draft -> on(draft, "back", back -> sideLonger(back, -0.45)),
                draft -> on(draft, "back", back -> notchMoved(back, 0.45)),
                draft -> held(draft, "shoulder", 1, 0.45, "evenly"),
                draft -> on(draft, "back", back -> turned(back, "armhole", false, Math.toRadians(0.9))),
                draft -> on(draft, "front", front -> turned(front, "armhole", true, Math.toRadians(0.9))),
                draft -> on(draft, "back", back -> legLonger(back, "waist dart", 0.05)),
                draft -> on(draft, "back", back -> kinked(back, "waist dart", -Math.toRadians(1))),
                draft -> on(draft, "front", front -> front.grained(new Grain(Vector2D.of(1, 50), Vector2D.of(1, 150)))),
                draft -> on(draft, "front", front -> grainTurned(front, 120, 0.4)),
                draft -> on(draft, "back", back -> cornered(back, "armhole", Math.toRadians(2.5))),
                draft -> draft.with(takenIn(draft, 1.5)));
    }

    @Test
    void everyFaultIsFoundAndNothingIsInvented() throws IOException {
        List<Measurements> sizes = TorsoBlockSizesTest.sizes().toList();
        List<Fault> faults = faults();
        assertThat(faults).hasSizeGreaterThanOrEqualTo(40);
        assertThat(faults.stream().map(Fault::kind).distinct().count()).isGreaterThanOrEqualTo(9);
        Told told = new Told(new EnumMap<>(Kind.class), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        for (Measurements body : sizes) {
            Draft clean = clean(body);
            told.silent("clean, " + body.name(), found(clean));
            for (Fault fault : faults) {
                told.of(fault, body.name(), found(fault.plant().apply(clean)));
            }
            for (UnaryOperator<Draft> near : nearFaults()) {
                told.silent("near, " + body.name(), found(near.apply(clean)));
            }
        }
        write(told, faults.size(), sizes.size());
        assertThat(told.missed()).as("planted and not found").isEmpty();
        assertThat(told.invented()).as("told without cause").isEmpty();
        assertThat(told.loud()).as("told of what is clean or nearly so").isEmpty();
        assertThat(told.count("itself")).isGreaterThanOrEqualTo(faults.size() * sizes.size());
        assertThat(told.confusion().keySet())
                .isEqualTo(faults.stream().map(Fault::kind).collect(Collectors.toSet()));
    }

    /**
     * What was told of all that was planted.
     *
     * @param confusion for each kind that was planted how often which kind was told
     * @param missed what was planted and not told
     * @param invented what was told and does not follow
     * @param loud what was told where all is well
     */
    private record Told(
            Map<Kind, Map<String, Integer>> confusion, List<String> missed, List<String> invented, List<String> loud) {

        void of(Fault fault, String size, List<Finding> findings) {
            String as = fault.name() + ", " + size + ": " + findings;
            if (findings.stream().noneMatch(fault::isToldBy)) {
                missed.add(as);
            }
            for (Finding finding : findings) {
                String column = fault.column(finding);
                confusion.computeIfAbsent(fault.kind(), kind -> new TreeMap<>()).merge(column, 1, Integer::sum);
                if (column.startsWith(INVENTED)) {
                    invented.add(as);
                }
            }
        }

        void silent(String what, List<Finding> findings) {
            if (!findings.isEmpty()) {
                loud.add(what + ": " + findings);
            }
        }

        int count(String column) {
            return confusion.values().stream()
                    .mapToInt(row -> row.getOrDefault(column, 0))
                    .sum();
        }
    }

    private static void write(Told told, int faults, int sizes) throws IOException {
        int planted = faults * sizes;
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                "%d faults of %d kinds in %d sizes: %d planted, %d found, %d invented; of %d near-faults and %d clean drafts %d not silent.%n",
                faults,
                told.confusion().size(),
                sizes,
                planted,
                planted - told.missed().size(),
                told.invented().size(),
                nearFaults().size() * sizes,
                sizes,
                told.loud().size()));
        told.confusion().forEach((kind, row) -> text.append(String.format(Locale.ROOT, "%-22s %s%n", kind, row)));
        Files.createDirectories(Path.of("target"));
        Files.writeString(Path.of("target", "confusion.txt"), text.toString());
    }

    /** The waist printed in both units, the inches of another length; in eighths and tenths both, it is silent. */
    @Test
    void figuresThatContradictAreFound() throws IOException {
        for (Measurements body : TorsoBlockSizesTest.sizes().toList()) {
            Length waist = body.length(Measure.WAIST);
            assertThat(printed(Steps.DEFAULT.inches(waist), Steps.DEFAULT.cm(waist)))
                    .isEmpty();
            for (double by : new double[] {6.35, -6.35, 25.4, -10}) {
                String misprint = Steps.DEFAULT.inches(waist.plus(Length.mm(by)));
                assertThat(printed(misprint, Steps.DEFAULT.cm(waist)))
                        .as("%s by %s", body.name(), by)
                        .singleElement()
                        .satisfies(finding -> {
                            assertThat(finding.kind()).isEqualTo(Kind.UNITS_CONTRADICT);
                            assertThat(finding.where()).isEqualTo("the waist");
                            // Each figure is rounded by up to half its step.
                            assertThat(finding.excess()).isCloseTo(by, within(25.4 / 16 + 0.5));
                        });
            }
            double sixteenths = 2 * Math.floor(waist.mm() / 25.4 * 8) + 1;
            Length odd = Length.inches(sixteenths / 16);
            assertThat(printed(new Steps(16, 0.1).inches(odd), Steps.DEFAULT.cm(odd)))
                    .singleElement()
                    .satisfies(finding -> {
                        assertThat(finding.kind()).isEqualTo(Kind.UNITS_TOO_FINE);
                        assertThat(Math.abs(finding.excess())).isCloseTo(25.4 / 16, within(1e-9));
                    });
        }
    }

    private static List<Finding> printed(String inches, String metric) {
        return Checks.printed(List.of(new PrintedPair("the waist", inches, metric)), Steps.DEFAULT);
    }

    /** A garment drafted for a waist 20 mm smaller: the closed girth is off by as much, and the other levels are not. */
    @Test
    void aGirthThatIsOffIsFound() throws IOException {
        for (Measurements body : TorsoBlockSizesTest.sizes().toList()) {
            Draft torso = TorsoBlock.draft(body, Ease.CLOSE_FITTING).draft();
            assertThat(ClosedGirth.of(torso, body, Ease.CLOSE_FITTING))
                    .hasSize(3)
                    .allSatisfy(girth -> assertThat(girth.finding(0.5))
                            .as("%s of %s", girth.level(), body.name())
                            .isEmpty());
            Measurements smaller =
                    body.with(Measure.WAIST, body.length(Measure.WAIST).minus(Length.mm(20)));
            Draft tight = TorsoBlock.draft(smaller, Ease.CLOSE_FITTING).draft();
            List<Finding> found = ClosedGirth.of(tight, body, Ease.CLOSE_FITTING).stream()
                    .flatMap(girth -> girth.finding(0.5).stream())
                    .toList();
            assertThat(found).hasSize(1);
            assertThat(found.get(0).kind()).isEqualTo(Kind.GIRTH_OFF);
            assertThat(found.get(0).quantity()).isEqualTo(Quantity.LENGTH);
            assertThat(found.get(0).excess()).isCloseTo(-20, within(0.5));
            assertThat(found.get(0).where()).startsWith("'waist line'");
        }
    }
}
