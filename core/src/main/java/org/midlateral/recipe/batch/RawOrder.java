package org.midlateral.recipe.batch;

import java.util.List;
import java.util.function.Function;
import org.midlateral.measurement.file.Orders;

/**
 * One order as it stands in its source.
 *
 * @param place for messages: the file, and the line where it is one of many
 * @param reference as it was written, whether or not the order can be read; empty where that is not
 *     known
 * @param text all that was written, for telling whether it changed
 * @param read reads it, with overrides laid over it
 */
public record RawOrder(
    String place, String reference, String text, Function<List<String>, Orders.Result> read) {}
