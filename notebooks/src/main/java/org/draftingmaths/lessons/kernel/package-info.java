/**
 * The Java kernel of the lessons: an engine that runs cells in this JVM ({@link org.draftingmaths.lessons.kernel.CellEngine}),
 * what cells may call ({@link org.draftingmaths.lessons.kernel.Notebook}), and the launcher that serves the engine to
 * Jupyter. The engine knows no Jupyter library, so that the tests run lessons without one and the library can be changed.
 */
package org.draftingmaths.lessons.kernel;
