package org.draftingmaths.lessons;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.check.Checks;
import org.draftingmaths.exchange.Figure;
import org.draftingmaths.exchange.StepSheet;
import org.draftingmaths.exchange.Style;
import org.draftingmaths.exchange.Svg;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.lessons.styles.FestivalTunic;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.tables.ChartOptions;
import org.draftingmaths.tables.SizeChart;
import org.draftingmaths.tables.SizeCharts;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;

/** The main job from end to end: a style from measurements to finished pieces, seams walked, a planted fault found, prints and a step sheet. */
public final class Pattern {

    private Pattern() {}

    /**
     * Drafts, checks and draws.
     *
     * @param args the folder in which to leave what is made
     * @throws IOException when the folder cannot be written
     */
    public static void main(String[] args) throws IOException {
        if (args.length != 1) {
            throw new IllegalArgumentException("Name one folder in which to leave what is made.");
        }
        run(Path.of(args[0]), new PrintStream(System.out, true, StandardCharsets.UTF_8));
    }

    static void run(Path folder, PrintStream out) throws IOException {
        Measurements body = sizes().size("38").filledBy(ProportionRules.TORSO);
        Style tunic = FestivalTunic.draft(body);

        out.println("A flared tunic in size 38, drafted from a size chart: made in "
                + tunic.steps().sections().size() + " operations, "
                + tunic.patterns().size() + " pieces.");
        for (StepSheet.Section section : tunic.steps().sections()) {
            out.println("  " + section.heading());
        }

        out.println();
        check(tunic.draft(), out);

        out.println();
        out.println("The same with a fault planted: the back is drafted with its armhole depth read 4 mm too short.");
        Measurements misread = body.with(
                Measure.ARMHOLE_DEPTH, body.length(Measure.ARMHOLE_DEPTH).minus(Length.mm(4)));
        check(tunic.draft().with(FestivalTunic.draft(misread).draft().piece("back")), out);

        List<Path> written = tunic.writeTo(folder);
        Draft block = TorsoBlock.draft(body, Ease.CLOSE_FITTING).draft();
        for (String piece : List.of("front", "back")) {
            Figure figure = Figure.over(
                    "The " + piece + " over the block it came from",
                    tunic.draft().piece(piece),
                    block.piece(piece));
            Files.writeString(folder.resolve("block-and-" + piece + ".svg"), Svg.sketch(figure));
        }
        out.println();
        out.println("Every piece at full size, the pattern on one sheet and in tiles, the step sheet: " + written.size()
                + " files in " + folder);
        out.println("Sew a toile in cheap cloth before cutting good cloth; keep blades and pins away from children.");
    }

    private static SizeChart sizes() throws IOException {
        try (InputStream in = Pattern.class.getResourceAsStream("sizes.csv")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return SizeCharts.parse("sizes.csv", text, ChartOptions.DEFAULT.withWearer(Wearer.ADULT));
        }
    }

    private static void check(Draft draft, PrintStream out) {
        out.print(SeamTable.of(Walk.all(draft), Checks.SEAM_TOLERANCE));
        List<Finding> findings = Checks.all(draft, Checks.SEAM_TOLERANCE);
        out.println(findings.isEmpty() ? "Nothing found. " + Checks.LOOKED_AT : "Found:");
        findings.forEach(finding -> out.println("  " + finding.sentence(Steps.DEFAULT)));
    }
}
