package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Steps;

/**
 * Two lines that are sewn together. Each is an edge of a piece, part of one, or several of these one after the other.
 *
 * <p>A waistband over the skirt it closes, from the opening at the centre front round the back to the centre front again; front and
 * back are drawn as halves, so each comes twice, as it is drawn and mirrored:
 *
 * <pre>{@code
 * Seam.Mate half = Seam.Mate.of("back", "waist").then(Seam.Mate.backwards("front", "waist"));
 * Seam waist = Seam.flat("waist", Seam.Mate.of("waistband", "top"), half.reversed().mirrored().then(half));
 * }</pre>
 *
 * <p>Within a draft no cloth is sewn twice by the same seam, nor by two seams, unless the later is said to be {@link #caughtIn caught
 * in} with the other, as a facing is over a collar.
 *
 * @param name the name of the seam, unique in its draft
 * @param first the one side
 * @param second the other
 * @param held for each notch interval that is not sewn flat, what is declared of it; the others are flat
 * @param caught whether it may take cloth that another seam sews as well
 */
public record Seam(String name, Mate first, Mate second, List<Held> held, boolean caught) {

    /** Copies the list. */
    public Seam {
        Names.require(name, "A seam");
        held = List.copyOf(held);
    }

    /**
     * A seam of cloth that no other seam sews.
     *
     * @param name the name of the seam, unique in its draft
     * @param first the one side
     * @param second the other
     * @param held for each notch interval that is not sewn flat, what is declared of it
     */
    public Seam(String name, Mate first, Mate second, List<Held> held) {
        this(name, first, second, held, false);
    }

    /**
     * A seam sewn flat.
     *
     * @param name the name of the seam
     * @param first the one side
     * @param second the other
     * @return the seam
     */
    public static Seam flat(String name, Mate first, Mate second) {
        return new Seam(name, first, second, List.of());
    }

    /**
     * The seam said to be caught in: what it sews may be sewn by another seam as well, as a facing over a collar or the end of a strap
     * between neckline and facing.
     *
     * @return the seam
     */
    public Seam caughtIn() {
        return new Seam(name, first, second, held, true);
    }

    /**
     * One side of a seam: one whole edge in the simple case, else a chain of parts.
     *
     * @param parts the parts in the direction of sewing, at least one
     */
    public record Mate(List<Part> parts) {

        /** Copies the list. */
        public Mate {
            parts = List.copyOf(parts);
            if (parts.isEmpty()) {
                throw new IllegalArgumentException("A side of a seam has at least one edge.");
            }
        }

        private Mate(String piece, String edge, boolean forward) {
            this(List.of(new Part(piece, edge, forward, false, Optional.empty(), Optional.empty())));
        }

        /**
         * An edge sewn from its own start to its end.
         *
         * @param piece the name of the piece
         * @param edge the name of its edge
         * @return the mate
         */
        public static Mate of(String piece, String edge) {
            return new Mate(piece, edge, true);
        }

        /**
         * An edge sewn from its own end to its start.
         *
         * @param piece the name of the piece
         * @param edge the name of its edge
         * @return the mate
         */
        public static Mate backwards(String piece, String edge) {
            return new Mate(piece, edge, false);
        }

        /**
         * Part of an edge.
         *
         * @param from where it begins by the edge's own direction, as a base arc in mm; an opening at the very place is in the part
         * @param to where it stops, as a base arc in mm; an opening at the very place is not in the part
         * @return the mate
         * @throws IllegalArgumentException when this is a chain, or the arcs do not rise
         */
        public Mate between(double from, double to) {
            return cut(Optional.of(Place.at(from)), Optional.of(Place.at(to)));
        }

        /**
         * Part of an edge between two notches.
         *
         * @param from the notch where it begins, by the edge's own direction
         * @param to the notch where it stops
         * @return the mate
         * @throws IllegalArgumentException when this is a chain, a notch is of another edge, or they do not rise
         */
        public Mate between(Notch from, Notch to) {
            return cut(Optional.of(place(from)), Optional.of(place(to)));
        }

        /**
         * The part of an edge from a notch to the edge's own end.
         *
         * @param notch the notch
         * @return the mate
         * @throws IllegalArgumentException when this is a chain or the notch is of another edge
         */
        public Mate from(Notch notch) {
            return cut(Optional.of(place(notch)), Optional.empty());
        }

        /**
         * The part of an edge from its own start to a notch.
         *
         * @param notch the notch
         * @return the mate
         * @throws IllegalArgumentException when this is a chain or the notch is of another edge
         */
        public Mate upTo(Notch notch) {
            return cut(Optional.empty(), Optional.of(place(notch)));
        }

        /**
         * This side with another behind it.
         *
         * @param next what is sewn next
         * @return the chain
         */
        public Mate then(Mate next) {
            return new Mate(Stream.concat(parts.stream(), next.parts.stream()).toList());
        }

        /**
         * The same side sewn from its other end.
         *
         * @return the parts in the other order, each sewn the other way
         */
        public Mate reversed() {
            List<Part> turned = new ArrayList<>(parts.stream()
                    .map(part -> new Part(part.piece, part.edge, !part.forward, part.mirrored, part.from, part.to))
                    .toList());
            Collections.reverse(turned);
            return new Mate(turned);
        }

        /**
         * The same side on the other half of the body: on the mirrored one of a pair, or the other half of a piece cut on the fold.
         *
         * @return the parts in the same order, each on the other half
         */
        public Mate mirrored() {
            return new Mate(parts.stream()
                    .map(part -> new Part(part.piece, part.edge, part.forward, !part.mirrored, part.from, part.to))
                    .toList());
        }

        private Mate cut(Optional<Place> from, Optional<Place> to) {
            Part part = only();
            return new Mate(List.of(new Part(part.piece, part.edge, part.forward, part.mirrored, from, to)));
        }

        private Place place(Notch notch) {
            if (!notch.edge().equals(only().edge)) {
                throw new IllegalArgumentException("The notch is on '" + notch.edge() + "', not on " + words() + ".");
            }
            return new Place(notch.arc(), notch.beside());
        }

        private Part only() {
            if (parts.size() > 1) {
                throw new IllegalArgumentException("A part is taken of one edge, not of a chain: " + words() + ".");
            }
            return parts.get(0);
        }

        /**
         * Whether it is one edge from end to end, on the half that is drawn.
         *
         * @return true in the simple case
         */
        public boolean isOneEdge() {
            return parts.size() == 1 && parts.get(0).isWhole() && !parts.get(0).mirrored;
        }

        /**
         * The piece of a side that is one edge.
         *
         * @return its name
         * @throws DraftingException when the side is a chain, part of an edge, or mirrored
         */
        public String piece() {
            return oneEdge().piece;
        }

        /**
         * The edge of a side that is one edge.
         *
         * @return its name
         * @throws DraftingException when the side is a chain, part of an edge, or mirrored
         */
        public String edge() {
            return oneEdge().edge;
        }

        /**
         * Whether a side that is one edge is sewn from the edge's own start to its end.
         *
         * @return true when it is
         * @throws DraftingException when the side is a chain, part of an edge, or mirrored
         */
        public boolean forward() {
            return oneEdge().forward;
        }

        private Part oneEdge() {
            if (!isOneEdge()) {
                throw new DraftingException(
                        "Work on the side " + words() + " of a seam",
                        "this is done to one whole edge of a piece as it is drawn, not to a chain, a part or the mirrored half");
            }
            return parts.get(0);
        }

        /**
         * Its first part in the direction of sewing, or its last.
         *
         * @param end the end of the seam at which it lies
         * @return the part
         */
        public Part atEnd(End end) {
            return parts.get(end == End.STOP ? parts.size() - 1 : 0);
        }

        /**
         * The side in words.
         *
         * @return for example {@code 'waist' of 'back' and 'waist' of 'front'}
         */
        public String words() {
            return words(parts);
        }

        /**
         * Parts of a side in words.
         *
         * @param parts the parts
         * @return for example {@code 'waist' of 'back' and 'waist' of 'front'}
         */
        public static String words(List<Part> parts) {
            return parts.stream().map(Part::words).collect(Collectors.joining(" and "));
        }
    }

    /**
     * Where part of an edge begins or stops. No cut, turn or mirror changes it.
     *
     * @param arc the base arc in mm from the edge's own start
     * @param beside which side of an opening is meant, should one lie at that very place
     */
    public record Place(double arc, Beside beside) {

        /** Checks the arc. */
        public Place {
            if (!(arc >= 0 && Double.isFinite(arc))) {
                throw new IllegalArgumentException("A place on an edge lies 0 mm or more along it: " + arc + " mm.");
            }
            arc += 0.0; // A list of seams has no sign for nothing.
        }

        /**
         * A place, before an opening should one lie there.
         *
         * @param arc the base arc in mm from the edge's own start
         * @return the place
         */
        public static Place at(double arc) {
            return new Place(arc, Beside.BEFORE);
        }
    }

    /**
     * An edge of a piece, or part of it.
     *
     * @param piece the name of the piece
     * @param edge the name of its edge
     * @param forward whether it is sewn in the edge's own direction
     * @param mirrored whether it lies on the other half of the body: on the mirrored one of a pair, or the other half of a piece cut on
     *     the fold
     * @param from where it begins by the edge's own direction; empty at the edge's start
     * @param to where it stops by the edge's own direction; empty at the edge's end
     */
    public record Part(
            String piece, String edge, boolean forward, boolean mirrored, Optional<Place> from, Optional<Place> to) {

        /** Checks the names and that the places rise. */
        public Part {
            double begins = from.map(Place::arc).orElse(0.0);
            double stops = to.map(Place::arc).orElse(Double.POSITIVE_INFINITY);
            if (!(stops - begins > Panels.TOUCH)) {
                throw new IllegalArgumentException("Part of '" + edge + "' of '" + piece
                        + "' stops behind where it begins, by the edge's own direction: from " + begins + " mm to "
                        + stops + " mm.");
            }
        }

        /**
         * Whether it is the edge from end to end.
         *
         * @return true when no place cuts it
         */
        public boolean isWhole() {
            return from.isEmpty() && to.isEmpty();
        }

        /**
         * Where it begins, as a mark.
         *
         * @return the mark, by the edge's own direction
         */
        public Notch start() {
            return from.map(place -> new Notch(edge, place.arc, place.beside)).orElseGet(() -> Lengths.start(edge));
        }

        /**
         * Where it stops, as a mark.
         *
         * @param on the piece
         * @return the mark, by the edge's own direction
         */
        public Notch end(Piece on) {
            return to.map(place -> new Notch(edge, place.arc, place.beside)).orElseGet(() -> Lengths.end(on, edge));
        }

        /**
         * Whether one of its ends is the edge's own end, where another edge of the piece meets it, rather than a place partway.
         *
         * @param end which of its ends is meant, in the direction of sewing
         * @return true when it is
         */
        public boolean reachesCorner(End end) {
            return ((end == End.STOP) == forward ? to : from).isEmpty();
        }

        /**
         * The part in words.
         *
         * @return for example {@code 'waist' of 'front'} or {@code 'slit' of 'back' (mirrored) to 7 7/8 in (20.0 cm)}
         */
        public String words() {
            return "'" + edge + "' of '" + piece + "'" + (mirrored ? " (mirrored)" : "")
                    + from.map(place -> " from " + Quantity.LENGTH.print(place.arc, Steps.DEFAULT))
                            .orElse("")
                    + to.map(place -> " to " + Quantity.LENGTH.print(place.arc, Steps.DEFAULT))
                            .orElse("");
        }
    }

    /**
     * What is declared of one notch interval that is not sewn flat.
     *
     * @param interval the interval, counted from 1 in the direction of sewing
     * @param surplus by how many mm the first side is longer than the second there; negative when it is stretched to it
     * @param how by what it is brought to fit
     * @param reason why, in words
     */
    public record Held(int interval, double surplus, How how, String reason) {
        /** Checks the interval. */
        public Held {
            if (interval < 1 || !Double.isFinite(surplus)) {
                throw new IllegalArgumentException("Notch intervals count from 1, surplus is finite: interval "
                        + interval + ", " + surplus + " mm.");
            }
        }
    }

    /** Which end: of an edge, by its own direction; of a seam, by the direction of sewing. */
    public enum End {
        /** Where it starts. */
        START,
        /** Where it stops. */
        STOP
    }

    /** By what one edge is brought to the length of its mate. */
    public enum How {
        /** Held in or shrunk. */
        EASE,
        /** Gathered. */
        GATHERS,
        /** Stretched. */
        STRETCH,
        /** Held to a tape. */
        STAY
    }
}
