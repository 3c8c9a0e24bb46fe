package org.draftingmaths.curve;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** A path as the search for its meets sees it: its curves with what surrounds them, its joints and their gaps. */
final class Track {
    /** A curve of a path and where it starts; a gap at a joint is a straight of no length. */
    record Part(Curve curve, Box box, double start, boolean bridge) {
        double at(double t) {
            return bridge || t == 0 ? start : start + curve.length(0, t, Accuracy.DEFAULT);
        }
    }

    private final CurvePath path;
    private final List<Part> parts;
    private final double[] joints;
    private final double[] gaps;
    private final double length;
    private final boolean closed;
    private final double size;

    private Track(CurvePath path, double tolerance) {
        List<Curve> curves = path.curves();
        this.path = path;
        this.parts = new ArrayList<>(curves.size());
        this.joints = path.lengths();
        this.gaps = new double[joints.length];
        this.length = joints[joints.length - 1];
        this.closed = path.closes(CurvePath.JOINT);
        double largest = 0;
        for (int i = 0; i < curves.size(); i++) {
            Curve curve = curves.get(i);
            parts.add(new Part(curve, Box.around(curve), joints[i], false));
            largest = Math.max(largest, CurveMeets.size(curve));
            if (i + 1 < curves.size() || closed) {
                bridge(curve.end(), curves.get((i + 1) % curves.size()).start(), i + 1, tolerance);
            }
        }
        this.size = largest;
    }

    private void bridge(Vector2D from, Vector2D to, int joint, double tolerance) {
        double dx = to.getX() - from.getX();
        double dy = to.getY() - from.getY();
        if (dx * dx + dy * dy > 0.25 * tolerance * tolerance) {
            Straight gap = new Straight(from, to);
            parts.add(new Part(gap, Box.around(gap), joints[joint], true));
            gaps[joint] = Plane.distance(from, to);
            if (joint == joints.length - 1) {
                gaps[0] = gaps[joint];
            }
        }
    }

    /** A path's track; that for the default tolerance is made once. */
    static Track of(CurvePath path, double tolerance) {
        Track track = tolerance == Accuracy.DEFAULT
                ? ((CurveList) path.curves()).track(() -> new Track(path, tolerance))
                : new Track(path, tolerance);
        Checks.tolerance(tolerance, track.size);
        return track;
    }

    List<Part> parts() {
        return parts;
    }

    boolean closed() {
        return closed;
    }

    double apart(double a, double b) {
        double d = Math.abs(a - b);
        return closed ? Math.min(d, Math.abs(length - d)) : d;
    }

    /**
     * The joint at a position, or the position itself. What happens about the gap of a joint happens at the joint:
     * a line at an angle of a sixteenth may meet both curves and the gap.
     */
    double snapped(double at, double near) {
        for (int i = 0; i < joints.length; i++) {
            if (Math.abs(at - joints[i]) <= near + 16 * gaps[i]) {
                return closed && i == joints.length - 1 ? 0 : joints[i];
            }
        }
        return at;
    }

    /** Sixteen times the gap if the position is a joint, else nothing. */
    double looseness(double at) {
        double most = 0;
        for (int i = 0; i < joints.length; i++) {
            most = at == joints[i] ? Math.max(most, 16 * gaps[i]) : most;
        }
        return most;
    }

    boolean isJoint(double at) {
        for (double joint : joints) {
            if (at == joint) {
                return true;
            }
        }
        return false;
    }

    boolean isEnd(double at) {
        return !closed && (at == 0 || at == length);
    }

    /** How far one may go from a position before the next joint. */
    double room(double at) {
        double room = length;
        for (double joint : joints) {
            double d = apart(at, joint);
            room = d > 0 ? Math.min(room, d) : room;
        }
        return room;
    }

    Vector2D point(double at) {
        double wrapped = at < 0 ? at + length : at > length ? at - length : at;
        return path.pointAt(Math.min(length, Math.max(0, wrapped)));
    }
}
