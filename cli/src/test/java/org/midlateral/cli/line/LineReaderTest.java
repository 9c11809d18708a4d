package org.midlateral.cli.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A line is taken word by word as it is typed, and nothing is guessed. */
class LineReaderTest {
  private static final Parameter<Path> FILE = Parameter.operand("FILE", new PathValue(), "");
  private static final Parameter<Path> FILES = FILE.omissible().repeated();
  private static final Parameter<String> OUT =
      Parameter.option("--out", "DIR", new TextValue(), "");
  private static final Parameter<String> SET =
      Parameter.option("--set", "KEY=VALUE", new TextValue(), "").repeated();
  private static final Parameter<List<Double>> WRAP =
      Parameter.option("--wrap", "SHARE", new NumberList(), "").repeated();
  private static final Parameter<Long> SEED =
      Parameter.option("--seed", "S", new WholeNumber(-99, 99), "");
  private static final Parameter<Boolean> FORCE = Parameter.flag("--force", "");

  private static final CommandForm ONE = CommandForm.of("").with(FILE, OUT, SET, WRAP, SEED, FORCE);
  private static final CommandForm MANY = CommandForm.of("").with(FILES, OUT.needed(), FORCE);

  private static ReadLine read(CommandForm form, String... words) throws WrongCommandLine {
    return LineReader.read(form, List.of(words));
  }

  /** Of two words for an option the second is its value, whatever it looks like, but an option. */
  @ParameterizedTest
  @CsvSource({
    "--out b, b",
    "--out=b, b",
    "--out -, -",
    "--out -b, -b",
    "--out=-b, -b",
    "--out -5, -5",
    "--out --b, --b",
    "--out=--b, --b",
    "--out=--force, --force",
    "--out ---b, ---b",
    "--out=---b, ---b",
    "--out -outer, -outer",
    "--out -force=1, -force=1",
    "--out -force, -force",
    "--out -json, -json",
    "--out a=b, a=b",
    "--out=a=b, a=b",
    "--out \"b\", \"b\"",
    "--out=\"b\", \"b\"",
    "--out @b, @b",
  })
  void aValueIsTakenAsItStands(String typed, String value) throws WrongCommandLine {
    String[] option = typed.split(" ");
    ReadLine line =
        option.length == 1 ? read(ONE, "a", option[0]) : read(ONE, option[0], option[1], "a");
    assertThat(line.one(OUT)).contains(value);
    assertThat(line.must(FILE)).hasToString("a");
    assertThat(line.is(FORCE)).isFalse();
  }

  @Test
  void optionsMayStandBehindAndBeRepeated() throws WrongCommandLine {
    ReadLine line =
        read(ONE, "--set", "a=1", "f", "--wrap=1,2", "--set=b=2", "--wrap", "-3", "--force");
    assertThat(line.all(SET)).containsExactly("a=1", "b=2");
    assertThat(line.all(WRAP)).containsExactly(List.of(1.0, 2.0), List.of(-3.0));
    assertThat(line.is(FORCE)).isTrue();
    assertThat(line.one(SEED)).isEmpty();
    assertThat(line.told()).containsExactly("FILE", "--set KEY=VALUE", "--wrap 1,2,-3", "--force");
  }

  @Test
  void behindTwoDashesAllStandsForItself() throws WrongCommandLine {
    assertThat(read(ONE, "--force", "--", "--force").must(FILE)).hasToString("--force");
    assertThat(read(MANY, "a", "-5", "--out", "b", "--", "-c", "---d", "--").all(FILES))
        .map(Path::toString)
        .containsExactly("a", "-5", "-c", "---d", "--");
  }

  @ParameterizedTest
  @CsvSource({"true, true", "TRUE, true", "false, false"})
  void aFlagMayBeToldTheTruth(String word, boolean given) throws WrongCommandLine {
    assertThat(read(ONE, "a", "--force=" + word).is(FORCE)).isEqualTo(given);
  }

  @ParameterizedTest
  @CsvSource({
    "'', FILE must be given",
    "--, FILE must be given",
    "--force --nope, FILE must be given",
    "a --nope, there is no option '--nope'",
    "a --forc, there is no option '--forc'",
    "a --forced, there is no option '--forced'",
    "a -force, there is no option '-force'",
    "a -out=b, there is no option '-out=b'",
    "a -outb, there is no option '-outb'",
    "a -f, there is no option '-f'",
    "a --Force, there is no option '--Force'",
    "a --=b, there is no option '--=b'",
    "a -=b, there is no option '-=b'",
    "a b --nope, 'b' is one word too many; a name with blanks stands in quotation marks",
    "a --nope b, there is no option '--nope'",
    "a -5, '-5' is one word too many; a name with blanks stands in quotation marks",
    "a --force=no, '--force takes no value, and ''no'' is one'",
    "a --force --force, option '--force' should be specified only once",
    "a --out b --out c, option '--out' (DIR) should be specified only once",
    "a --out, --out DIR must be given",
    "a --out --force, --out DIR must be given",
    "a --out -h, --out DIR must be given",
    "a --out -- b, --out DIR must be given",
    "a --seed 1.5, --seed: '1.5' is not a whole number",
    "a --seed +100, --seed: '+100' is too large",
    "a --seed -9223372036854775808, --seed: '-9223372036854775808' is too large",
    "a --seed 99999999999999999999, --seed: '99999999999999999999' is too large",
    "a --wrap 1;2, --wrap: '1;2' is not a number; decimals follow a point",
    "a --help --seed x, --seed: 'x' is not a whole number",
  })
  void whatIsWrongIsTold(String typed, String sentence) {
    String[] words = typed.isEmpty() ? new String[0] : typed.split(" ");
    assertThatThrownBy(() -> read(ONE, words))
        .isInstanceOf(WrongCommandLine.class)
        .hasMessage(sentence);
  }

  @Test
  void allThatIsMissingIsToldAtOnce() {
    assertThatThrownBy(() -> read(CommandForm.of("").with(OUT.needed(), SEED.needed(), FILE)))
        .hasMessage("FILE and --out DIR and --seed S must be given");
  }

  /** Who asks for help need not know the rest. */
  @ParameterizedTest
  @CsvSource({"-h", "--help", "a b c -h", "--nope --help", "-hV", "-hx"})
  void helpIsGivenAllTheSame(String typed) throws WrongCommandLine {
    assertThat(read(ONE, typed.split(" ")).is(Parameter.HELP)).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"-V", "--version", "--version a b", "-Vh"})
  void soIsTheVersion(String typed) throws WrongCommandLine {
    assertThat(read(MANY, typed.split(" ")).is(Parameter.VERSION)).isTrue();
  }
}
