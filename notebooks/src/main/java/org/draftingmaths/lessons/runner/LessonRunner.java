package org.draftingmaths.lessons.runner;

import com.google.gson.JsonArray;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.draftingmaths.lessons.kernel.CellEngine;
import org.draftingmaths.lessons.kernel.CellException;

/** Runs lessons in this JVM, without Jupyter, as the kernel would run them. */
public final class LessonRunner {
    private static final int REPEAT_MILLIS = 100;

    private LessonRunner() {}

    /**
     * Runs all cells in order.
     *
     * @param lesson what to run
     * @param limit after which the running cell is ended
     * @return the lesson with the outputs that running gave, as it is committed
     * @throws CellException if a cell fails or the time is up; the message names lesson, cell and line
     */
    public static Lesson run(Lesson lesson, Duration limit) throws CellException {
        ScheduledExecutorService watch = Executors.newSingleThreadScheduledExecutor(LessonRunner::daemon);
        try (CellEngine engine = new CellEngine(List.of())) {
            // Again and again, because an interrupt between two cells ends neither.
            Future<?> alarm = watch.scheduleAtFixedRate(
                    engine::interrupt, limit.toMillis(), REPEAT_MILLIS, TimeUnit.MILLISECONDS);
            try {
                return lesson.withOutputs(runCells(lesson, engine));
            } finally {
                alarm.cancel(false);
            }
        } finally {
            watch.shutdownNow();
        }
    }

    private static List<JsonArray> runCells(Lesson lesson, CellEngine engine) throws CellException {
        List<JsonArray> outputs = new ArrayList<>();
        for (LessonCell cell : lesson.cells()) {
            if (cell.isCode()) {
                outputs.add(runCell(lesson, cell, engine));
            }
        }
        return outputs;
    }

    private static JsonArray runCell(Lesson lesson, LessonCell cell, CellEngine engine) throws CellException {
        StoredOutputs output = new StoredOutputs();
        try {
            Object value = engine.run(cell.number(), cell.source(), output);
            return output.end(value, cell.number());
        } catch (CellException e) {
            throw e.after(lesson.name() + ", ");
        }
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "lesson time limit");
        thread.setDaemon(true);
        return thread;
    }
}
