package org.draftingmaths.measure;

import java.util.Locale;

/** The points and levels of the body, and two marks of the draft, between which a tape runs. */
public enum Landmark {
    /** The crown of the head. */
    CROWN("the highest point of the head, the figure standing upright"),
    /** The nape: the cervical point. */
    NAPE("the tip of the bone that stands out most at the back of the neck when the head is bowed"),
    /** The neck point, where the neck meets the shoulder. */
    NECK_POINT("the point at the side where the base of the neck meets the top of the shoulder"),
    /** The base of the neck. */
    NECK_BASE("the line round the base of the neck, through the nape, both neck points and the hollow of the throat"),
    /** The shoulder point, where the shoulder meets the arm. */
    SHOULDER_POINT("the outer end of the shoulder, above the middle of the arm hanging down"),
    /** The armhole level. */
    ARMHOLE_LEVEL("the level of the armpits, carried across the back"),
    /** The left back armpit fold. */
    LEFT_BACK_FOLD("the left fold where the back of the arm meets the trunk, midway between shoulder point and armpit"),
    /** The right back armpit fold. */
    RIGHT_BACK_FOLD(
            "the right fold where the back of the arm meets the trunk, midway between shoulder point and armpit"),
    /** The left front armpit fold. */
    LEFT_FRONT_FOLD(
            "the left fold where the front of the arm meets the trunk, midway between shoulder point and armpit"),
    /** The right front armpit fold. */
    RIGHT_FRONT_FOLD(
            "the right fold where the front of the arm meets the trunk, midway between shoulder point and armpit"),
    /** The line round the top of the arm. */
    ARMHOLE_LINE("the line round the arm at its root, through the shoulder point and under the armpit"),
    /** The bust level. */
    BUST_LEVEL("the level line round the trunk over both apexes"),
    /** An apex: the bust point. */
    APEX("the point of the breast that stands out most"),
    /** The other apex. */
    OTHER_APEX("the apex of the other breast"),
    /** The under-bust level. */
    UNDER_BUST_LEVEL("the level line round the ribs directly below the breasts"),
    /** The waist level. */
    WAIST_LEVEL("the natural waist, where a string tied round the trunk settles"),
    /** The hip level. */
    HIP_LEVEL("the level line round the trunk where the seat is fullest"),
    /** The knee level. */
    KNEE_LEVEL("the level of the middle of the kneecap"),
    /** The soles. */
    FLOOR("the floor on which the figure stands without shoes"),
    /** The fullest line round the upper arm. */
    UPPER_ARM_LINE("the line round the arm where it is fullest between shoulder and elbow"),
    /** The elbow. */
    ELBOW("the bone that stands out most at the outside of the bent elbow"),
    /** The wrist. */
    WRIST("the bone that stands out at the little finger's side of the wrist"),
    /** A mark of the draft: the inner end of the bust dart at the shoulder. */
    INNER_DART_LEG("in the draft, the end at the shoulder of the bust dart's leg nearer to the neck"),
    /** A mark of the draft: the outer end of the bust dart at the shoulder. */
    OUTER_DART_LEG("in the draft, the end at the shoulder of the bust dart's leg nearer to the arm");

    private final String description;

    Landmark(String description) {
        this.description = description;
    }

    /**
     * Where it is.
     *
     * @return a description without a full stop
     */
    public String description() {
        return description;
    }

    /**
     * The name as it stands in a sentence.
     *
     * @return the name in small letters, such as {@code neck point}
     */
    public String label() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
