package org.draftingmaths.lessons;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.draftingmaths.block.Block;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.check.Checks;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.exchange.Figure;
import org.draftingmaths.exchange.Page;
import org.draftingmaths.exchange.Pdf;
import org.draftingmaths.exchange.Scale;
import org.draftingmaths.exchange.StepSheet;
import org.draftingmaths.exchange.Svg;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.tables.ChartOptions;
import org.draftingmaths.tables.SizeChart;
import org.draftingmaths.tables.SizeCharts;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;

/** The main job from end to end: measurements, block, dart moved, seams walked, a planted fault found, pictures, prints and a step sheet. */
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
        Block drafted = TorsoBlock.bodice(body, Ease.CLOSE_FITTING);
        Draft block = drafted.draft();
        Piece front = block.piece("front");
        Reworked moved = Darts.rotate(front, "bust dart", Spot.on("side seam", 120), "side dart");
        Draft bodice = block.with(moved.piece());

        out.println(
                "A close-fitting bodice in size 38, drafted from a size chart, its bust dart moved to the side seam.");
        moved.ledger().sentences(Steps.DEFAULT).forEach(sentence -> out.println("  " + sentence));

        out.println();
        check(bodice, out);

        out.println();
        out.println("The same with a fault planted: the back is drafted with its armhole depth read 4 mm too short.");
        Measurements misread = body.with(
                Measure.ARMHOLE_DEPTH, body.length(Measure.ARMHOLE_DEPTH).minus(Length.mm(4)));
        check(bodice.with(TorsoBlock.bodice(misread, Ease.CLOSE_FITTING).draft().piece("back")), out);

        Files.createDirectories(folder);
        write(folder.resolve("front.svg"), Figure.of("Front", front));
        write(
                folder.resolve("front-side-dart.svg"),
                Figure.over("Front, bust dart moved to the side seam", moved.piece(), front));
        write(folder.resolve("back.svg"), Figure.of("Back", block.piece("back")));
        print(folder, bodice);
        StepSheet sheet = StepSheet.of("A close-fitting bodice in size 38")
                .then("Draft the bodice block", drafted.ledger())
                .then("Move the bust dart to the side seam", moved.ledger());
        Files.writeString(folder.resolve("step-sheet.md"), sheet.markdown(Steps.DEFAULT));
        Files.writeString(folder.resolve("step-sheet.html"), sheet.html(Steps.DEFAULT));
        out.println();
        out.println("Pictures at full size, the pattern tiled for a printer and the step sheet: " + folder);
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

    /** The pattern over as many pages as it takes, for either paper. */
    private static void print(Path folder, Draft bodice) throws IOException {
        List<Figure> pieces = List.of(
                Figure.of("Front", bodice.piece("front"))
                        .labelled("front", "piece 1 of 2", "size 38", "cut 1 on the fold"),
                Figure.of("Back", bodice.piece("back"))
                        .labelled("back", "piece 2 of 2", "size 38", "cut 1 on the fold"));
        for (Page page : List.of(Page.A4, Page.LETTER)) {
            Files.write(
                    folder.resolve("bodice-" + page.name().replace(' ', '-') + ".pdf"),
                    Pdf.tiles("Bodice, size 38", Scale.FULL, page, pieces));
        }
    }

    private static void write(Path file, Figure figure) throws IOException {
        Files.writeString(file, Svg.sheet(figure));
    }
}
