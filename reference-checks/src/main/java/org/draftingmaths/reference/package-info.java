/** Drafts from published instructions, built from the library's own primitives, to be compared with the published figures. */
package org.draftingmaths.reference;
