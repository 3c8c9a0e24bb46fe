package org.draftingmaths.exchange;

import java.util.List;
import org.draftingmaths.piece.Role;

/**
 * A shape of a drawing on paper, in mm, y up.
 *
 * @param id its id, or nothing
 * @param role what its class says becomes of it
 * @param grain whether its class says that it is a grain line
 * @param group the group it stands in directly, counted in the order of the file
 * @param groupName the id of that group or of the nearest one around it that has one, or nothing
 * @param ownGroup whether that id is the group's own, so that its shapes are one piece
 * @param place where in the file it stands
 * @param subpaths its strokes
 */
record SvgShape(
        String id,
        Role role,
        boolean grain,
        int group,
        String groupName,
        boolean ownGroup,
        String place,
        List<Subpath> subpaths) {

    SvgShape {
        subpaths = List.copyOf(subpaths);
    }
}
