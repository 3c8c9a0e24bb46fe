/** The verifier's command: a draft and a list of its seams in, what is wrong with it out. */
package org.draftingmaths.command;
