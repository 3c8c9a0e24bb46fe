/**
 * What an operation did, and what a check found.
 *
 * <p>A {@link org.draftingmaths.ledger.Ledger} is a list of {@link org.draftingmaths.ledger.Entry entries}. Every room adds
 * entries of its own: what was cut, turned or closed, and which lengths, areas and angles were conserved or changed. An entry
 * can say itself as a teacher would, in both unit systems.
 *
 * <p>Three failures have three forms. What can be judged from an argument alone is an {@link IllegalArgumentException}. What
 * depends on the piece is a {@link org.draftingmaths.ledger.DraftingException}, with what was asked, what is possible and
 * where. A poor draft is no failure at all but data: a {@link org.draftingmaths.ledger.Finding}.
 */
package org.draftingmaths.ledger;
