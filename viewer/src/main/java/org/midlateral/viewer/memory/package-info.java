/**
 * What outlives the window: settings from one start to the next, and values that were not saved.
 *
 * <p>Promise: a file of ours that is missing, damaged or not to be written is as if it said
 * nothing; nobody is kept from working by it. Nothing leaves the machine. Input and output: small
 * text files in the user's own folder for settings.
 */
package org.midlateral.viewer.memory;
