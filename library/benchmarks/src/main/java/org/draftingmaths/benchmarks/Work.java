package org.draftingmaths.benchmarks;

import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.function.ToDoubleFunction;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.analysis.integration.RombergIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.draftingmaths.curve.Corner;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Flatten;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.curve.Parallel;
import org.draftingmaths.curve.ParallelOutline;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Spot;
import org.locationtech.jts.algorithm.Length;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.impl.PackedCoordinateSequence;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The work, ours and others'. Each call does the whole set; the table divides by its size. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class Work {

    List<Cubics.Known> realistic;
    List<Cubics.Known> nasty;
    List<Integer> cornersThree;
    List<Integer> cornersSix;
    GaussIntegrator gauss32;
    Piece piece;
    Slash slash;
    List<Piece> style;
    CurvePath ring;
    CurvePath line;

    /** Reads the curves and draws a piece of twelve edges. */
    @Setup(Level.Trial)
    public void read() {
        realistic = Cubics.all().stream().filter(Cubics.Known::realistic).toList();
        nasty = Cubics.all().stream().filter(known -> !known.realistic()).toList();
        cornersThree = realistic.stream().map(known -> corners(known, 1e-3)).toList();
        cornersSix = realistic.stream().map(known -> corners(known, 1e-6)).toList();
        gauss32 = new GaussIntegratorFactory().legendre(32, 0, 1);
        Drawing drawing = Drawing.of("piece").from(0, 0).edge("hem", Role.HEM).curve(80, 5, 160, 5, 240, 0);
        for (int i = 0; i < 9; i++) {
            double y = 60 * (i + 1);
            drawing = drawing.edge("side " + i, Role.SEAM).curve(245, y - 40, 235, y - 20, 240, y);
        }
        piece = drawing.edge("top", Role.SEAM)
                .curve(160, 545, 80, 535, 0, 540)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
        style = WholeStyle.pieces();
        ring = ring();
        line = CurvePath.polyline(Vector2D.of(-400, -60), Vector2D.of(400, 90));
        slash = Slash.straight("cut", Spot.on("hem", 120), Spot.on("top", 110));
    }

    /** Twenty curved edges of 60 to 110 mm round a form like a bodice's, corners outward and inward. */
    static CurvePath ring() {
        SplittableRandom random = new SplittableRandom(7);
        int n = 20;
        Vector2D[] corner = new Vector2D[n];
        for (int i = 0; i < n; i++) {
            double size = 220 + 30 * Math.sin(1.7 * i);
            double angle = 2 * Math.PI * i / n;
            corner[i] = Vector2D.of(size * Math.cos(angle), 1.3 * size * Math.sin(angle));
        }
        Curve[] edges = new Curve[n];
        for (int i = 0; i < n; i++) {
            Vector2D a = corner[i];
            Vector2D b = corner[(i + 1) % n];
            Vector2D out = Vector2D.of(b.getY() - a.getY(), a.getX() - b.getX());
            double bow = random.nextDouble(-0.12, 0.2);
            edges[i] = new Cubic(
                    a, a.lerp(b, 0.33).add(bow, out), a.lerp(b, 0.67).add(bow * random.nextDouble(0.6, 1.4), out), b);
        }
        return CurvePath.of(edges);
    }

    static Polygon polygon(CurvePath path) {
        List<Vector2D> corners = Flatten.corners(path, 0.01);
        Coordinate[] points = new Coordinate[corners.size()];
        for (int i = 0; i < points.length; i++) {
            points[i] = new Coordinate(corners.get(i).getX(), corners.get(i).getY());
        }
        points[points.length - 1] = points[0];
        return new GeometryFactory().createPolygon(points);
    }

    /** A mitred allowance of 10 mm, with joins and clean-up, at most 0.01 mm off by proof. */
    @Benchmark
    public ParallelOutline allowance() {
        return Parallel.outline(ring, 10, Corner.mitre(3), 0.01);
    }

    /** The same by JTS on edges flattened to 0.01 mm, its own simplification off. */
    @Benchmark
    public Geometry allowanceByJts() {
        BufferParameters parameters =
                new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 3);
        parameters.setSimplifyFactor(0);
        return BufferOp.bufferOp(polygon(ring), 10, parameters);
    }

    /** A style of six pieces with fifteen edges each, from measuring to checking. */
    @Benchmark
    public Object style() {
        return WholeStyle.made(style);
    }

    /** The allowances of its six pieces alone by JTS, on edges flattened to 0.01 mm. */
    @Benchmark
    public List<Geometry> styleByJts() {
        BufferParameters parameters =
                new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 3);
        parameters.setSimplifyFactor(0);
        return style.stream()
                .map(each -> BufferOp.bufferOp(polygon(Paper.outline(each)), 10, parameters))
                .toList();
    }

    /** Where a line meets twenty curved edges. */
    @Benchmark
    public Meets line() {
        return Meets.of(line, ring);
    }

    /** The same by JTS on edges flattened to 0.01 mm. */
    @Benchmark
    public Geometry lineByJts() {
        Coordinate[] ends = {new Coordinate(-400, -60), new Coordinate(400, 90)};
        return polygon(ring).getBoundary().intersection(new GeometryFactory().createLineString(ends));
    }

    private static double sum(List<Cubics.Known> set, ToDoubleFunction<Cubic> length) {
        double sum = 0;
        for (Cubics.Known known : set) {
            sum += length.applyAsDouble(known.cubic());
        }
        return sum;
    }

    static double romberg(Cubic cubic, double accuracy) {
        return new RombergIntegrator(1e-15, accuracy, 3, 32).integrate(10_000_000, speed(cubic), 0, 1);
    }

    double gauss(Cubic cubic) {
        return gauss32.integrate(speed(cubic));
    }

    /** The speed by plain arithmetic on coefficients worked out once: as quick as the other libraries can be given it. */
    static UnivariateFunction speed(Cubic c) {
        double ax = 3 * (c.startHandle().getX() - c.start().getX());
        double ay = 3 * (c.startHandle().getY() - c.start().getY());
        double bx = 6 * (c.endHandle().getX() - c.startHandle().getX());
        double by = 6 * (c.endHandle().getY() - c.startHandle().getY());
        double dx = 3 * (c.end().getX() - c.endHandle().getX());
        double dy = 3 * (c.end().getY() - c.endHandle().getY());
        return t -> {
            double s = 1 - t;
            double x = s * s * ax + s * t * bx + t * t * dx;
            double y = s * s * ay + s * t * by + t * t * dy;
            return Math.sqrt(x * x + y * y);
        };
    }

    @Benchmark
    public double lengthNine() {
        return sum(realistic, cubic -> cubic.length(1e-9));
    }

    @Benchmark
    public double lengthSix() {
        return sum(realistic, cubic -> cubic.length(1e-6));
    }

    @Benchmark
    public double lengthThree() {
        return sum(realistic, cubic -> cubic.length(1e-3));
    }

    @Benchmark
    public double lengthNineNasty() {
        return sum(nasty, cubic -> cubic.length(1e-9));
    }

    @Benchmark
    public double rombergNine() {
        return sum(realistic, cubic -> romberg(cubic, 1e-9));
    }

    @Benchmark
    public double rombergSix() {
        return sum(realistic, cubic -> romberg(cubic, 1e-6));
    }

    @Benchmark
    public double rombergNineNasty() {
        return sum(nasty, cubic -> romberg(cubic, 1e-9));
    }

    @Benchmark
    public double gaussFixed() {
        return sum(realistic, this::gauss);
    }

    /** What no caller can know: how many chords are just enough, found from the true length. The error falls with 1/n^2. */
    private static int corners(Cubics.Known known, double accuracy) {
        double error = known.length() - polyline(known.cubic(), 256);
        int n = Math.max(1, (int) Math.ceil(256 * Math.sqrt(error / accuracy)));
        while (known.length() - polyline(known.cubic(), n) > accuracy) {
            n += 1 + n / 200;
        }
        return n;
    }

    static double polyline(Cubic cubic, int chords) {
        CoordinateSequence points = new PackedCoordinateSequence.Double(chords + 1, 2, 0);
        for (int i = 0; i <= chords; i++) {
            Vector2D p = cubic.at((double) i / chords);
            points.setOrdinate(i, 0, p.getX());
            points.setOrdinate(i, 1, p.getY());
        }
        return Length.ofLine(points);
    }

    private static double sum(List<Cubics.Known> set, List<Integer> corners) {
        double sum = 0;
        for (int i = 0; i < set.size(); i++) {
            sum += polyline(set.get(i).cubic(), corners.get(i));
        }
        return sum;
    }

    /** By JTS on a polyline with just enough corners for a thousandth of a millimetre. */
    @Benchmark
    public double polylineThree() {
        return sum(realistic, cornersThree);
    }

    /** By JTS on a polyline with just enough corners for a millionth of a millimetre. */
    @Benchmark
    public double polylineSix() {
        return sum(realistic, cornersSix);
    }

    @Benchmark
    public double place() {
        double sum = 0;
        for (Cubics.Known known : realistic) {
            sum += known.cubic().parameterAt(0.37 * known.length(), 1e-9);
        }
        return sum;
    }

    @Benchmark
    public double placeBrent() {
        double sum = 0;
        for (Cubics.Known known : realistic) {
            sum += brent(known);
        }
        return sum;
    }

    double brent(Cubics.Known known) {
        UnivariateFunction speed = speed(known.cubic());
        IterativeLegendreGaussIntegrator length = new IterativeLegendreGaussIntegrator(5, 1e-13, 1e-10, 2, 32);
        double wanted = 0.37 * known.length();
        return new BrentSolver(1e-15, 1e-13)
                .solve(200, t -> t == 0 ? -wanted : length.integrate(1_000_000, speed, 0, t) - wanted, 0, 1);
    }

    @Benchmark
    public Object cut() {
        return Panels.cut(piece, slash);
    }

    @Benchmark
    public Object cutByJts() {
        GeometryFactory factory = new GeometryFactory();
        List<Vector2D> corners = Flatten.corners(Paper.outline(piece), 0.01);
        Coordinate[] ring = new Coordinate[corners.size()];
        for (int i = 0; i < ring.length; i++) {
            ring[i] = new Coordinate(corners.get(i).getX(), corners.get(i).getY());
        }
        ring[ring.length - 1] = ring[0];
        Geometry polygon = factory.createPolygon(ring);
        Geometry left = factory.createPolygon(new Coordinate[] {
            new Coordinate(-10, -10),
            new Coordinate(120, -10),
            new Coordinate(110, 560),
            new Coordinate(-10, 560),
            new Coordinate(-10, -10)
        });
        return List.of(polygon.intersection(left), polygon.difference(left));
    }
}
