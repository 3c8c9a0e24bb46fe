package org.draftingmaths.lessons;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.draftingmaths.check.Checks;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.exchange.Figure;
import org.draftingmaths.exchange.Svg;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.reference.PublishedBodice;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Steps;

/** The main job from end to end: measurements, block, dart moved, seams walked, a planted fault found, pictures. */
public final class Pattern {

    private Pattern() {}

    /**
     * Drafts, checks and draws.
     *
     * @param args the folder in which to leave the pictures
     * @throws IOException when the folder cannot be written
     */
    public static void main(String[] args) throws IOException {
        if (args.length != 1) {
            throw new IllegalArgumentException("Name one folder in which to leave the pictures.");
        }
        run(Path.of(args[0]), new PrintStream(System.out, true, StandardCharsets.UTF_8));
    }

    static void run(Path folder, PrintStream out) throws IOException {
        Piece front = PublishedBodice.BUST_88.front();
        Piece back = PublishedBodice.BUST_88.back();
        Reworked moved = Darts.rotate(front, "bust dart", Spot.on("side seam", 135), "side dart");

        out.println("A bodice for bust 88 cm, its bust dart moved to the side seam.");
        moved.ledger().sentences(Steps.DEFAULT).forEach(sentence -> out.println("  " + sentence));

        out.println();
        check(PublishedBodice.draft(moved.piece(), back), out);

        out.println();
        out.println("The same with a fault planted: the back's side seam is 4 mm too long.");
        check(PublishedBodice.draft(moved.piece(), PublishedBodice.BUST_88.back(4)), out);

        Files.createDirectories(folder);
        write(folder.resolve("front.svg"), Figure.of("Front", front));
        write(
                folder.resolve("front-side-dart.svg"),
                Figure.over("Front, bust dart moved to the side seam", moved.piece(), front));
        write(folder.resolve("back.svg"), Figure.of("Back", back));
        out.println();
        out.println("Pictures at full size: " + folder);
        out.println("Sew a toile in cheap cloth before cutting good cloth; keep blades and pins away from children.");
    }

    private static void check(Draft draft, PrintStream out) {
        out.print(SeamTable.of(Walk.all(draft), Checks.SEAM_TOLERANCE));
        List<Finding> findings = Checks.all(draft, Checks.SEAM_TOLERANCE);
        out.println(findings.isEmpty() ? "Nothing found." : "Found:");
        findings.forEach(finding -> out.println("  " + finding.sentence(Steps.DEFAULT)));
    }

    private static void write(Path file, Figure figure) throws IOException {
        Files.writeString(file, Svg.sheet(figure));
    }
}
