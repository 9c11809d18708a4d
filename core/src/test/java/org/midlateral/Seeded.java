package org.midlateral;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.AnnotationBasedArgumentsProvider;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.ArgumentsSource;
import org.junit.jupiter.params.support.ParameterDeclarations;

/**
 * A test of one seed, a long, that runs for a row of them. The same in every run, a failure names
 * its seed; {@code -Dmidlateral.seed=SEED} begins the row at another one.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
@ParameterizedTest(name = "seed {0}")
@ArgumentsSource(Seeded.Row.class)
public @interface Seeded {
  /** How many seeds. */
  int value();

  /** How many in a long run; as many as usual where this is left out. */
  int full() default 0;

  /** The seeds from the first one on. */
  final class Row extends AnnotationBasedArgumentsProvider<Seeded> {
    private static final long FIRST = Long.getLong("midlateral.seed", 20261125);

    @Override
    protected Stream<? extends Arguments> provideArguments(
        ParameterDeclarations parameters, ExtensionContext context, Seeded seeded) {
      int count = LongRun.count(seeded.value(), Math.max(seeded.value(), seeded.full()));
      return LongStream.range(FIRST, FIRST + count).mapToObj(Arguments::of);
    }
  }
}
