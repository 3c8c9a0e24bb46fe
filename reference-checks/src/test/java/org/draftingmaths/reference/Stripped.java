package org.draftingmaths.reference;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.exchange.Limits;
import org.draftingmaths.exchange.SvgOptions;
import org.draftingmaths.exchange.SvgOutlines;
import org.draftingmaths.exchange.Traced;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;

/**
 * A draft as a stranger gives it: closed outlines in SVG without names, in another order, each begun elsewhere, turned, moved and perhaps
 * turned over.
 *
 * @param draft the draft as it was read
 * @param svg the drawing
 * @param ends where the two ends of each edge have come to, by {@code edge of piece}
 */
record Stripped(Draft draft, String svg, Map<String, List<Vector2D>> ends) {

    /** How darts are drawn: by the end that is cut when folded, or cut out along their legs. */
    enum Darts {
        FOLDED,
        CUT_OUT
    }

    /** Which pieces may be turned over. */
    enum Over {
        EACH,
        ALL_OR_NONE
    }

    static Stripped of(Draft draft, Darts darts, Over over, long seed) {
        Random random = new Random(seed);
        List<Piece> pieces = new ArrayList<>(draft.pieces());
        Collections.shuffle(pieces, random);
        boolean all = random.nextBoolean();
        Map<String, List<Vector2D>> ends = new LinkedHashMap<>();
        StringBuilder svg =
                new StringBuilder("<svg xmlns='http://www.w3.org/2000/svg' width='9000mm' viewBox='0 0 9000 9000'>\n");
        for (Piece piece : pieces) {
            boolean turnedOver = over == Over.EACH ? random.nextBoolean() : all;
            AffineTransformMatrix2D motion = motion(turnedOver, random);
            List<Curve> curves = new ArrayList<>();
            List<PaperSide> sides = Paper.sides(piece);
            for (int i = 0; i < sides.size(); i++) {
                PaperSide side = sides.get(i);
                curves.addAll(drawn(piece, side, darts).transformed(motion).curves());
                Vector2D start = motion.apply(side.path().start());
                Vector2D end = motion.apply(side.path().end());
                String name = side.edge() + " of " + piece.name();
                if (ends.containsKey(name) && ends.get(name).get(1).distance(start) < 1e-6) {
                    ends.put(name, List.of(ends.get(name).get(0), end));
                } else if (ends.containsKey(name) && ends.get(name).get(0).distance(end) < 1e-6) {
                    ends.put(name, List.of(start, ends.get(name).get(1)));
                } else if (!ends.containsKey(name)) {
                    ends.put(name, List.of(start, end));
                }
            }
            Collections.rotate(curves, random.nextInt(curves.size()));
            svg.append("<path d='").append(path(curves)).append("'/>\n");
        }
        String text = svg.append("</svg>\n").toString();
        Traced traced = SvgOutlines.parse("stranger.svg", text, SvgOptions.DEFAULT, Limits.DEFAULT);
        if (!traced.findings().isEmpty() || !traced.notes().isEmpty()) {
            throw new IllegalStateException(traced.findings() + " " + traced.notes());
        }
        return new Stripped(traced.draft(), text, ends);
    }

    private static AffineTransformMatrix2D motion(boolean turnedOver, Random random) {
        return AffineTransformMatrix2D.createScale(turnedOver ? -1 : 1, 1)
                .premultiply(AffineTransformMatrix2D.createRotation(random.nextDouble() * 2 * Math.PI))
                .premultiply(AffineTransformMatrix2D.createTranslation(
                        random.nextDouble() * 5000, -random.nextDouble() * 5000));
    }

    private static CurvePath drawn(Piece piece, PaperSide side, Darts darts) {
        Optional<String> opening = side.opening().filter(name -> darts == Darts.CUT_OUT);
        if (opening.isEmpty()) {
            return side.path();
        }
        CurvePath one = Measured.leg(piece, opening.get(), Leg.BEFORE);
        CurvePath other = Measured.leg(piece, opening.get(), Leg.AFTER);
        boolean onwards = one.start().distance(side.path().start()) < 1e-6;
        return onwards ? one.then(other.reversed()) : other.then(one.reversed());
    }

    private static String path(List<Curve> curves) {
        StringBuilder d = new StringBuilder("M").append(point(curves.get(0).start()));
        for (Curve curve : curves) {
            if (curve instanceof Cubic cubic) {
                d.append(" C").append(point(cubic.startHandle())).append(point(cubic.endHandle()));
            } else if (curve instanceof Arc) {
                throw new IllegalStateException("No arcs are drawn here.");
            } else {
                d.append(" L");
            }
            d.append(point(curve.end()));
        }
        return d.append(" z").toString();
    }

    private static String point(Vector2D point) {
        return String.format(Locale.ROOT, " %.6f,%.6f", point.getX(), -point.getY());
    }

    /** The edge of another draft of these pieces that has the ends of an edge of the draft before; none when it came apart. */
    Optional<String> now(String edge, Draft other) {
        List<Vector2D> wanted = ends.get(edge);
        for (Piece piece : other.pieces()) {
            for (var candidate : piece.edges()) {
                CurvePath path = Paper.edge(piece, candidate.name());
                boolean onwards = path.start().distance(wanted.get(0)) < 1e-3
                        && path.end().distance(wanted.get(1)) < 1e-3;
                boolean back = path.start().distance(wanted.get(1)) < 1e-3
                        && path.end().distance(wanted.get(0)) < 1e-3;
                if (onwards || back) {
                    return Optional.of("'" + candidate.name() + "' of '" + piece.name() + "'");
                }
            }
        }
        return Optional.empty();
    }

    /** The two edges of a pair, whichever stands first. */
    static Set<String> pair(String one, String other) {
        return new TreeSet<>(List.of(one, other));
    }
}
