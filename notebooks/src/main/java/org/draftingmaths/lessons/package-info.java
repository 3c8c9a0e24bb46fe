/** The main job from end to end, and what the lessons need. */
package org.draftingmaths.lessons;
