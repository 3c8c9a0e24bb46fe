package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.piece.Detached;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redrafted;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Seam;

/**
 * A style while it is being made: the draft as it is now, and the step sheet so far. Every operation goes to both, so that none is done and not told.
 *
 * <pre>{@code
 * Making tunic = Making.of("Tunic, size 38", "Draft the block", block.draft(), block.ledger())
 *         .on("front", "Leave the waist dart unsewn", front -> Darts.leave(front, "waist dart", Use.Kind.FLARE))
 *         .on("back", "Leave the waist dart unsewn", back -> Darts.leave(back, "waist dart", Use.Kind.FLARE));
 * }</pre>
 *
 * @param draft the draft as it is now
 * @param steps what was done to it
 */
public record Making(Draft draft, StepSheet steps) {

    /**
     * A style of which the block is there.
     *
     * @param title the title of its step sheet
     * @param heading what was done first, as an instruction
     * @param draft the draft
     * @param ledger what was done
     * @return the style in the making
     */
    public static Making of(String title, String heading, Draft draft, Ledger ledger) {
        return new Making(draft, StepSheet.of(title).then(heading, ledger, figures(draft.pieces())));
    }

    /**
     * A piece by its name.
     *
     * @param name the name
     * @return the piece as it is now
     */
    public Piece piece(String name) {
        return draft.piece(name);
    }

    /**
     * Does something to one piece.
     *
     * @param piece the name of the piece
     * @param heading what is done, as an instruction; the name of the piece is put before it
     * @param operation the operation
     * @return the style afterwards
     */
    public Making on(String piece, String heading, Function<Piece, Reworked> operation) {
        Reworked done = operation.apply(draft.piece(piece));
        return new Making(
                draft.with(done.piece()), steps.then(heading(piece, heading), done.ledger(), changed(done.piece())));
    }

    private static String heading(String piece, String heading) {
        return Character.toUpperCase(piece.charAt(0)) + piece.substring(1) + ": "
                + Character.toLowerCase(heading.charAt(0)) + heading.substring(1);
    }

    /**
     * Does something to pieces that are laid together.
     *
     * @param heading what is done, as an instruction
     * @param operation the operation
     * @return the style afterwards
     */
    public Making joined(String heading, Function<Draft, ? extends Redrafted> operation) {
        Redrafted done = operation.apply(draft);
        Figure[] pictures = done.draft().pieces().stream()
                .flatMap(piece -> Stream.of(changed(piece)))
                .toArray(Figure[]::new);
        return new Making(done.draft(), steps.then(heading, done.ledger(), pictures));
    }

    /**
     * Adds pieces and the seams by which they are sewn.
     *
     * @param heading what is done, as an instruction
     * @param pieces the new pieces
     * @param seams the new seams
     * @param ledger how they were made
     * @return the style afterwards
     */
    public Making adding(String heading, List<Piece> pieces, List<Seam> seams, Ledger ledger) {
        List<Piece> allPieces = new ArrayList<>(draft.pieces());
        allPieces.addAll(pieces);
        List<Seam> allSeams = new ArrayList<>(draft.seams());
        allSeams.addAll(seams);
        return new Making(new Draft(draft.name(), allPieces, allSeams), steps.then(heading, ledger, figures(pieces)));
    }

    /**
     * Cuts a piece in two along a style line; its seams are sewn to both parts.
     *
     * @param piece the name of the piece
     * @param heading what is done, as an instruction; the name of the piece is put before it
     * @param operation the operation
     * @return the style afterwards
     */
    public Making parted(String piece, String heading, Function<Piece, Detached> operation) {
        Detached done = operation.apply(draft.piece(piece));
        return new Making(
                draft.parted(piece, done),
                steps.then(heading(piece, heading), done.ledger(), figures(List.of(done.after(), done.before()))));
    }

    /**
     * Puts seams at the end of the order of make, as the sides where a facing must be turned before they are closed.
     *
     * @param seams the names of the seams, in the order in which they are sewn
     * @return the style afterwards
     * @throws IllegalArgumentException when there is no such seam
     */
    public Making sewnLast(String... seams) {
        List<String> last = List.of(seams);
        List<Seam> all = new ArrayList<>(draft.seams().stream()
                .filter(seam -> !last.contains(seam.name()))
                .toList());
        for (String name : last) {
            all.add(draft.seams().stream()
                    .filter(seam -> seam.name().equals(name))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("There is no seam named '" + name + "'; there are "
                            + String.join(
                                    ", ", draft.seams().stream().map(Seam::name).toList()) + ".")));
        }
        return new Making(new Draft(draft.name(), draft.pieces(), all), steps);
    }

    /**
     * Says what whoever sews must mind and no figure tells. It stands behind the seams, under "Mind when you sew".
     *
     * @param words instructions and cautions
     * @return the style afterwards
     */
    public Making minding(Entry... words) {
        return new Making(draft, steps.then(Style.MIND, Ledger.of(words)));
    }

    private static Figure[] figures(List<Piece> pieces) {
        return pieces.stream().map(piece -> Figure.of(piece.name(), piece)).toArray(Figure[]::new);
    }

    /** A piece over what it was before; no picture when its outline is as it was. */
    private Figure[] changed(Piece now) {
        Piece was = draft.piece(now.name());
        return Paper.outline(now).equals(Paper.outline(was))
                ? new Figure[0]
                : new Figure[] {Figure.over(now.name(), now, was)};
    }
}
