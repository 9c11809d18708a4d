/**
 * The words behind {@code midlateral}: each option is declared once, and by that it is read, told
 * in the help, and offered by the shell.
 *
 * <p>Promise: a line that cannot be understood gives a {@link
 * org.midlateral.cli.line.WrongCommandLine} with one sentence for who typed it; nothing here writes
 * or reads a file. Only the asked command's declarations are made, and no text of help before it is
 * asked for: every command waits for this.
 */
package org.midlateral.cli.line;
