package org.draftingmaths.ledger;

import java.util.Optional;

/**
 * A request that this piece cannot meet. It says what was asked, why it cannot be, what is possible and where; nothing is
 * ever clipped to what is possible instead.
 */
public final class DraftingException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String asked;
    private final String reason;
    private final transient Reach reach;

    /**
     * A refusal for which no range can be given.
     *
     * @param asked what was asked, for example {@code Slash 'a' from 'waist' to 'armhole'}
     * @param reason why it cannot be and where
     */
    public DraftingException(String asked, String reason) {
        super(asked + ": " + reason + ".");
        this.asked = asked;
        this.reason = reason;
        this.reach = null;
    }

    /**
     * A refusal with what would be possible.
     *
     * @param asked what was asked
     * @param reason why it cannot be and where
     * @param reach the figure asked and the range that is possible
     */
    public DraftingException(String asked, String reason, Reach reach) {
        super(asked + ": " + reason + " (" + reach.words() + ").");
        this.asked = asked;
        this.reason = reason;
        this.reach = reach;
    }

    /**
     * What was asked.
     *
     * @return the operation and its operands, in words
     */
    public String asked() {
        return asked;
    }

    /**
     * Why it cannot be.
     *
     * @return the reason with its place, in words
     */
    public String reason() {
        return reason;
    }

    /**
     * The figure asked and what is possible, where a figure is the matter.
     *
     * @return the reach, if there is one
     */
    public Optional<Reach> reach() {
        return Optional.ofNullable(reach);
    }
}
