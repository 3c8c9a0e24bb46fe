package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;

/**
 * A part of the sheet that is rigid by itself.
 *
 * @param ring its border: closed, simple and anticlockwise
 * @param lines the level lines on it
 * @param darts the inside darts on it
 */
public record Panel(List<Run> ring, List<Stretch> lines, List<Laid> darts) {

    /** Copies the lists. */
    public Panel {
        ring = List.copyOf(ring);
        lines = List.copyOf(lines);
        darts = List.copyOf(darts);
    }

    /** A panel with nothing on it. */
    static Panel bare(List<Run> ring) {
        return new Panel(ring, List.of(), List.of());
    }

    /** The same panel with another ring. */
    Panel with(List<Run> other) {
        return new Panel(other, lines, darts);
    }

    /** The other runs of the ring, from the one that follows a run round to the one before it. */
    List<Run> onwardsFrom(Run run) {
        int at = ring.indexOf(run);
        List<Run> others = new ArrayList<>(ring.subList(at + 1, ring.size()));
        others.addAll(ring.subList(0, at));
        return others;
    }

    /** The panel carried along with all that lies on it. */
    Panel moved(AffineTransformMatrix2D by) {
        return new Panel(
                ring.stream().map(run -> run.moved(by)).toList(),
                lines.stream().map(line -> line.moved(by)).toList(),
                darts.stream().map(dart -> dart.moved(by)).toList());
    }

    /**
     * The panel in a patternmaker's words: by the openings that part it from others and its longest edge, or, where there are not two of
     * them, by all its edges.
     */
    String words() {
        List<String> beside = besides();
        if (beside.size() > 1) {
            return "the part " + longest().map(edge -> "with " + edge + " ").orElse("") + "between " + listed(beside);
        }
        List<String> edges = edges().map(run -> run.border().words()).distinct().toList();
        return edges.isEmpty() ? "the part between the openings" : "the part with " + listed(edges);
    }

    private Stream<Run> edges() {
        return ring.stream().filter(run -> run.border() instanceof Border.OfEdge);
    }

    private Optional<String> longest() {
        return edges().max((a, b) -> Double.compare(a.length(), b.length()))
                .map(run -> run.border().words());
    }

    /** The openings of which one leg is its own and the other another panel's. */
    private List<String> besides() {
        List<Border.OfLeg> legs = ring.stream()
                .map(Run::border)
                .filter(Border.OfLeg.class::isInstance)
                .map(Border.OfLeg.class::cast)
                .distinct()
                .toList();
        return legs.stream()
                .map(Border.OfLeg::opening)
                .filter(name ->
                        legs.stream().filter(leg -> leg.opening().equals(name)).count() == 1)
                .map(name -> "'" + name + "'")
                .toList();
    }

    private static String listed(List<String> names) {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }
}
