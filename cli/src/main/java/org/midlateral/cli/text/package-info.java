/**
 * Results as text: tables for a person, JSON for a script, paragraphs for a terminal.
 *
 * <p>Promise: same result, same text. Inputs: what the library computed. Output: text that ends
 * with a line feed; units stand in it.
 */
package org.midlateral.cli.text;
