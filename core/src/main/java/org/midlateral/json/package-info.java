/**
 * Records as JSON text.
 *
 * <p>Promise: components in their order, the same record always as the same text. Knows nothing of
 * fingers.
 */
package org.midlateral.json;
