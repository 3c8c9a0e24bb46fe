package org.draftingmaths.finish;

import org.draftingmaths.ledger.Entry;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;

/**
 * An allowance was added along an edge.
 *
 * @param edge the name of the edge
 * @param width the allowance in mm
 * @param net the length of the edge on the stitch line as drawn, in mm
 * @param cut the length of its cut line, corners left out, in mm
 */
public record AllowanceAdded(String edge, double width, double net, double cut) implements Entry {

    @Override
    public String sentence(Steps steps) {
        return "Added " + steps.both(Length.mm(width)) + " along '" + edge + "': "
                + steps.both(Length.mm(net)) + " on the stitch line, " + steps.both(Length.mm(cut))
                + " at the cut edge.";
    }
}
