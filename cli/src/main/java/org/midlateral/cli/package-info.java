/**
 * The command line: reads arguments, calls the library, tells what came of it.
 *
 * <p>Promise: results go to standard output or into files, messages to standard error; every run
 * ends with one of the statuses of {@link org.midlateral.cli.ExitStatus}; no stack trace reaches a
 * user. Commands take their streams from outside, so that tests run them in process. Nothing is
 * computed here.
 */
package org.midlateral.cli;
