package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.check.Checks;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.exchange.Limits;
import org.draftingmaths.exchange.SeamLists;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.piece.Detach;
import org.draftingmaths.piece.Detached;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.suppose.Suppose;
import org.draftingmaths.suppose.Supposed;
import org.draftingmaths.suppose.Supposition;
import org.junit.jupiter.api.Test;

/**
 * The reverse check on clean drafts of every published women's size, stripped of all that was declared. What is told of each true pair is
 * counted in a table; a pair that is called certain is never a wrong one.
 */
class StrangersDraftsTest {

    private static final List<String> CLASSES = List.of("certain", "likely", "possible", "not told");

    /** How often what is true was told as what. */
    private static final class Table {
        private final Map<String, Map<String, Integer>> rows = new LinkedHashMap<>();

        void count(String row, String told) {
            rows.computeIfAbsent(row, name -> new LinkedHashMap<>()).merge(told, 1, Integer::sum);
        }

        int of(String row, String told) {
            return rows.getOrDefault(row, Map.of()).getOrDefault(told, 0);
        }

        int all(String row) {
            return rows.getOrDefault(row, Map.of()).values().stream()
                    .mapToInt(Integer::intValue)
                    .sum();
        }

        /** Over all rows that begin alike. */
        int sum(String beginning, String told) {
            return rows.keySet().stream()
                    .filter(row -> row.startsWith(beginning))
                    .mapToInt(row -> of(row, told))
                    .sum();
        }

        String text() {
            StringBuilder text = new StringBuilder("| true | " + String.join(" | ", CLASSES) + " | all |\n")
                    .append("|---|---|---|---|---|---|\n");
            for (String row : rows.keySet()) {
                text.append("| ").append(row);
                CLASSES.forEach(told -> text.append(" | ").append(of(row, told)));
                text.append(" | ").append(all(row)).append(" |\n");
            }
            return text.toString();
        }
    }

    /** A style and how many darts are in its outlines. */
    private record Style(String name, Draft draft, int darts, Stripped.Over over) {}

    @Test
    void trueMatesAreToldAndCertainIsNeverWrong() throws IOException {
        Table table = new Table();
        List<Measurements> sizes = TorsoBlockSizesTest.sizes().toList();
        Set<String> faults = new LinkedHashSet<>();
        int seams = 0;
        int darts = 0;
        for (int size = 0; size < sizes.size(); size++) {
            for (Style style : styles(sizes.get(size))) {
                long seed = 100L * size;
                for (Stripped.Darts drawn : Stripped.Darts.values()) {
                    Stripped stripped = Stripped.of(style.draft(), drawn, style.over(), seed++);
                    Supposed supposed = Suppose.of(stripped.draft(), Checks.SEAM_TOLERANCE);
                    mates(table, style, stripped, supposed);
                    darts(table, style, drawn, supposed);
                    seams += style.draft().seams().size();
                    darts += style.darts();
                    faults(faults, style, sizes.get(size), drawn, supposed);
                    list(stripped, supposed);
                }
            }
        }
        Files.writeString(
                Path.of("target", "strangers-drafts.md"), table.text() + "\n" + String.join("\n", faults) + "\n");
        assertThat(table.sum("no mates", "certain")).isZero();
        assertThat(table.sum("no dart", "certain")).isZero();
        assertThat(CLASSES.stream().mapToInt(told -> table.sum("mates", told)).sum())
                .isEqualTo(seams);
        assertThat(CLASSES.stream().mapToInt(told -> table.sum("dart", told)).sum())
                .isEqualTo(darts);
        assertThat(faults).isEmpty();
    }

    private static void mates(Table table, Style style, Stripped stripped, Supposed supposed) {
        Map<Set<String>, String> told = new LinkedHashMap<>();
        supposed.suppositions().stream()
                .filter(each -> each.kind() == Supposition.Kind.MATES)
                .forEach(each -> told.put(
                        Stripped.pair(each.places().get(0), each.places().get(1)),
                        each.sureness().words()));
        for (Seam seam : style.draft().seams()) {
            Optional<String> one =
                    stripped.now(seam.first().edge() + " of " + seam.first().piece(), supposed.draft());
            Optional<String> other =
                    stripped.now(seam.second().edge() + " of " + seam.second().piece(), supposed.draft());
            String found = one.isEmpty() || other.isEmpty() ? null : told.remove(Stripped.pair(one.get(), other.get()));
            table.count("mates, " + style.name(), found == null ? "not told" : found);
        }
        told.values().forEach(sureness -> table.count("no mates, " + style.name(), sureness));
    }

    private static void darts(Table table, Style style, Stripped.Darts drawn, Supposed supposed) {
        List<Supposition> told = supposed.suppositions().stream()
                .filter(each -> each.kind() == Supposition.Kind.DART || each.kind() == Supposition.Kind.DART_END)
                .toList();
        String how = drawn == Stripped.Darts.FOLDED ? "drawn folded, " : "cut out, ";
        for (int i = 0; i < Math.max(style.darts(), told.size()); i++) {
            table.count(
                    (i < style.darts() ? "dart " : "no dart ") + how + style.name(),
                    i < told.size() ? told.get(i).sureness().words() : "not told");
        }
    }

    /** A clean draft has no faults but missing grain, and darts that the checks of the declared draft find wide too. */
    private static void faults(
            Set<String> faults, Style style, Measurements body, Stripped.Darts drawn, Supposed supposed) {
        Set<Finding.Kind> own = new LinkedHashSet<>();
        Checks.all(style.draft(), Checks.SEAM_TOLERANCE).forEach(finding -> own.add(finding.kind()));
        supposed.findings().stream()
                .filter(finding -> finding.kind() != Finding.Kind.GRAIN_MISSING)
                .filter(finding -> !own.contains(finding.kind()))
                .forEach(finding -> faults.add(style.name() + " " + body.name() + " " + drawn + " " + finding));
    }

    /** The list that is written reads back to the seams that are supposed. */
    private static void list(Stripped stripped, Supposed supposed) {
        Draft darted = Suppose.darts(stripped.draft(), Checks.SEAM_TOLERANCE);
        assertThat(SeamLists.parse("seams.csv", SeamLists.text(supposed), darted, Limits.DEFAULT))
                .isEqualTo(supposed.draft());
    }

    // ------------------------------------------------------------------------------------------------ styles

    private static List<Style> styles(Measurements body) {
        Draft torso = TorsoBlock.draft(body, Ease.CLOSE_FITTING).draft();
        Draft bodice = TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft();
        Piece front = bodice.piece("front");
        List<Style> styles = new ArrayList<>();
        styles.add(new Style("torso block", torso, openings(torso), Stripped.Over.EACH));
        styles.add(style("bodice", bodice));
        styles.add(style(
                "bodice, side dart",
                bodice.with(Darts.rotate(front, "bust dart", Spot.on("side seam", 90), "side dart")
                        .piece())));
        styles.add(style(
                "bodice, armhole dart",
                bodice.with(Darts.rotate(front, "bust dart", Spot.on("armhole", 80), "armhole dart")
                        .piece())));
        styles.add(style(
                "bodice, divided dart",
                bodice.with(Darts.divide(
                                front,
                                "bust dart",
                                List.of(
                                        new Darts.Part(Spot.on("side seam", 90), "side dart", 0.5),
                                        new Darts.Part(Spot.on("armhole", 80), "armhole dart", 0.5)))
                        .piece())));
        styles.add(style("bodice, panels", panels(bodice)));
        styles.add(style("whole bodice", whole(bodice)));
        styles.add(style("skirt", skirt(body)));
        styles.add(style("tunic", tunic(body)));
        return styles;
    }

    private static Style style(String name, Draft draft) {
        return new Style(
                name,
                draft,
                openings(draft),
                name.startsWith("whole") ? Stripped.Over.ALL_OR_NONE : Stripped.Over.EACH);
    }

    private static int openings(Draft draft) {
        return draft.pieces().stream()
                .mapToInt(piece -> piece.openings().size())
                .sum();
    }

    /** The front cut through both of its darts; its shoulder is in two parts, which fit no edge of the back. */
    private static Draft panels(Draft bodice) {
        Detached parted = Detach.through(
                bodice.piece("front"),
                "panel seam",
                List.of("bust dart", "waist dart"),
                List.of(),
                "one panel",
                "other panel");
        Piece side = parted.with("side seam");
        return new Draft(
                "panels",
                List.of(parted.before(), parted.after(), bodice.piece("back")),
                List.of(
                        parted.seam("panel seam"),
                        Seam.flat("side", Seam.Mate.of(side.name(), "side seam"), Seam.Mate.of("back", "side seam"))));
    }

    /** Left and right of front and back. A half drawn from the centre to the right is the wearer's left front and her right back. */
    private static Draft whole(Draft bodice) {
        Piece front = bodice.piece("front");
        Piece back = bodice.piece("back");
        return new Draft(
                "whole",
                List.of(
                        front.named("left front"),
                        other(front, "right front"),
                        other(back, "left back"),
                        back.named("right back")),
                List.of(
                        Seam.flat("a", Seam.Mate.of("left front", "side seam"), Seam.Mate.of("left back", "side seam")),
                        Seam.flat("b", Seam.Mate.of("left front", "shoulder"), Seam.Mate.of("left back", "shoulder")),
                        Seam.flat(
                                "c", Seam.Mate.of("right front", "side seam"), Seam.Mate.of("right back", "side seam")),
                        Seam.flat(
                                "d", Seam.Mate.of("right front", "shoulder"), Seam.Mate.of("right back", "shoulder"))));
    }

    private static Piece other(Piece piece, String name) {
        return Panels.mirror(piece, Vector2D.ZERO, Vector2D.of(0, 1)).piece().named(name);
    }

    /** By how much the side of the skirt comes in from hip to waist, in mm. */
    private static final double SIDE_IN = 35;

    /** A knee-length skirt with one dart in each half, and a band shaped to it. */
    private static Draft skirt(Measurements body) {
        double hip = (body.mm(Measure.HIP) + 40) / 4;
        Piece front = skirtHalf("front", hip + 10, 90, 20);
        Piece back = skirtHalf("back", hip - 10, 130, 28);
        return new Draft(
                "skirt",
                List.of(
                        front,
                        back,
                        band("front band", Lengths.folded(front, "waist")),
                        band("back band", Lengths.folded(back, "waist"))),
                List.of(
                        Seam.flat("side", Seam.Mate.of("front", "side"), Seam.Mate.of("back", "side")),
                        Seam.flat("front waist", Seam.Mate.of("front", "waist"), Seam.Mate.of("front band", "lower")),
                        Seam.flat("back waist", Seam.Mate.of("back", "waist"), Seam.Mate.of("back band", "lower")),
                        Seam.flat("band", Seam.Mate.of("front band", "end"), Seam.Mate.of("back band", "end"))));
    }

    /** The side curve of both halves is the same, so that they fit; the waist rises to it. */
    private static Piece skirtHalf(String name, double hip, double depth, double intake) {
        double top = hip - SIDE_IN;
        double x = 0.45 * top;
        return Drawing.of(name)
                .from(0, -600)
                .edge("hem", Role.HEM)
                .line(hip, -600)
                .edge("side", Role.SEAM)
                .line(hip, -200)
                .curve(hip, -120, hip - 0.6 * SIDE_IN, -40, top, 12)
                .edge("waist", Role.SEAM)
                .curve(top - 30, 3, x + 40, 0, x + intake / 2, 0)
                .dart("dart", x, -depth, x - intake / 2, 0, 0, Leg.AFTER)
                .line(0, 0)
                .edge("centre", Role.FOLD)
                .line(0, -600)
                .piece();
    }

    private static Piece band(String name, double length) {
        return Drawing.of(name)
                .from(0, 0)
                .edge("lower", Role.SEAM)
                .line(length, 0)
                .edge("end", Role.SEAM)
                .line(length - 6, 40)
                .edge("upper", Role.FINISHED)
                .line(0, 40)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
    }

    /** Panels to the shoulder; each panel seam is one curve that both of its panels have. */
    private static Draft tunic(Measurements body) {
        double hip = (body.mm(Measure.HIP) + 120) / 4;
        List<Piece> pieces = new ArrayList<>(tunicHalf("front", hip + 10, 70, 420, 16, 60, 0.52));
        pieces.addAll(tunicHalf("back", hip - 10, 74, 428, 19, 20, 0.47));
        return new Draft(
                "tunic",
                pieces,
                List.of(
                        Seam.flat("fp", Seam.Mate.of("front centre", "panel"), Seam.Mate.of("front side", "panel")),
                        Seam.flat("bp", Seam.Mate.of("back centre", "panel"), Seam.Mate.of("back side", "panel")),
                        Seam.flat("side", Seam.Mate.of("front side", "side"), Seam.Mate.of("back side", "side")),
                        Seam.flat(
                                "inner",
                                Seam.Mate.of("front centre", "shoulder"),
                                Seam.Mate.of("back centre", "shoulder")),
                        Seam.flat(
                                "outer",
                                Seam.Mate.of("front side", "shoulder"),
                                Seam.Mate.of("back side", "shoulder"))));
    }

    private static List<Piece> tunicHalf(
            String name, double hip, double neck, double top, double slope, double neckDepth, double part) {
        double fall = Math.tan(Math.toRadians(slope));
        double inner = 48 * Math.cos(Math.toRadians(slope));
        double outer = 68 * Math.cos(Math.toRadians(slope));
        double px = neck + inner;
        double py = top - inner * fall;
        double ex = px + outer;
        double ey = py - outer * fall;
        double hx = part * hip;
        Piece centre = Drawing.of(name + " centre")
                .from(0, -500)
                .edge("hem", Role.HEM)
                .line(hx, -500)
                .edge("panel", Role.SEAM)
                .curve(hx - 20, -200, px - 40, 60, px, py)
                .edge("shoulder", Role.SEAM)
                .line(neck, top)
                .edge("neckline", Role.FINISHED)
                .curve(neck - 8, top - neckDepth - 10, neck - 30, top - neckDepth - 20, 0, top - neckDepth - 20)
                .edge("centre", Role.FOLD)
                .line(0, -500)
                .piece();
        Piece side = Drawing.of(name + " side")
                .from(hx, -500)
                .edge("hem", Role.HEM)
                .line(hip, -500)
                .edge("side", Role.SEAM)
                .curve(hip - 10, -150, hip - 45, 0, hip - 30, 190)
                .edge("armhole", Role.FINISHED)
                .curve(hip - 60, 195, ex - 15, 250, ex, ey)
                .edge("shoulder", Role.SEAM)
                .line(px, py)
                .edge("panel", Role.SEAM)
                .curve(px - 40, 60, hx - 20, -200, hx, -500)
                .piece();
        return List.of(centre, side);
    }
}
