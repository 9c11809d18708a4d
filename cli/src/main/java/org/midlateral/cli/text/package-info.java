/**
 * Results as text: tables for a person, JSON for a script; the text of a path read, and what is
 * wrong with a command line.
 *
 * <p>Promise: same result, same text. Inputs: what the library computed. Output: text that ends
 * with a line feed; units stand in it.
 */
package org.midlateral.cli.text;
