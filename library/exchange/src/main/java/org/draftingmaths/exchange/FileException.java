package org.draftingmaths.exchange;

/** A file that says something that cannot be, or that is larger than the limits allow: which file, where in it, and why. */
public final class FileException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String file;
    private final String place;
    private final String reason;

    /**
     * A refusal of a file.
     *
     * @param file the name of the file
     * @param place where in it: line and column, and what stands there; empty when the whole file is meant
     * @param reason what is wrong, and what would be right
     */
    public FileException(String file, String place, String reason) {
        this(file, place, reason, null);
    }

    FileException(String file, String place, String reason, Throwable cause) {
        super(file + (place.isEmpty() ? "" : ", " + place) + ": " + reason, cause);
        this.file = file;
        this.place = place;
        this.reason = reason;
    }

    /**
     * Which file.
     *
     * @return its name
     */
    public String file() {
        return file;
    }

    /**
     * Where in the file.
     *
     * @return line and column, and what stands there; empty when the whole file is meant
     */
    public String place() {
        return place;
    }

    /**
     * What is wrong.
     *
     * @return the reason, and what would be right
     */
    public String reason() {
        return reason;
    }
}
