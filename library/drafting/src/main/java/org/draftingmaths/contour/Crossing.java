package org.draftingmaths.contour;

/**
 * A line that runs over a joined seam: one edge of the front, and one of the back, which meet at one end of the seam. A neckline or an
 * armhole is such a line over the shoulder.
 *
 * @param seam the name of the seam
 * @param front the name of the front piece
 * @param frontEdge its edge
 * @param back the name of the back piece
 * @param backEdge its edge
 */
public record Crossing(String seam, String front, String frontEdge, String back, String backEdge) {

    /**
     * A line whose edges have one name on front and back.
     *
     * @param seam the name of the seam, for example {@code shoulder}
     * @param front the name of the front piece
     * @param back the name of the back piece
     * @param edge the name of the edge on both, for example {@code neckline}
     * @return the line
     */
    public static Crossing of(String seam, String front, String back, String edge) {
        return new Crossing(seam, front, edge, back, edge);
    }

    /** The line in words. */
    String words() {
        return frontEdge.equals(backEdge) ? "'" + frontEdge + "'" : "'" + frontEdge + "' and '" + backEdge + "'";
    }
}
