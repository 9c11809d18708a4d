package org.midlateral.cli.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;

/**
 * What bash and zsh offer where a command's line is typed: commands, a command's options, the words
 * that may stand behind an option, and files.
 *
 * @param program that is called
 * @param commands under it, by name
 */
public record CompletionScript(String program, Map<String, CommandForm> commands) {
  private static final String TEMPLATE =
      """
      # Completion of {program} for bash and zsh; the shell sources it.
      if [ -n "$ZSH_VERSION" ]; then
        autoload -U +X compinit && compinit
        autoload -U +X bashcompinit && bashcompinit
      fi

      _complete_{program}() {
        local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]}
        local command=${COMP_WORDS[1]} words='' files=''
        if [[ $COMP_CWORD == 1 ]]; then
          command='' before=''
        fi
        # A shell may take --name=value apart at its sign.
        if [[ $word == = ]]; then
          word=''
        elif [[ $before == = ]]; then
          before=${COMP_WORDS[COMP_CWORD-2]}
        fi
        case "$command $before" in
      {cases}  esac
        local IFS=$' \\t\\n'
        COMPREPLY=($(compgen -W "$words" -- "$word"))
        if [[ ${COMPREPLY[0]} == *= ]]; then
          compopt -o nospace 2>/dev/null
        fi
        # Names of files may hold blanks.
        IFS=$'\\n'
        if [[ -n $files ]]; then
          COMPREPLY+=($(compgen -f -- "$word"))
          compopt -o filenames 2>/dev/null
        fi
        return 0
      }
      complete -F _complete_{program} {program}
      """;

  public CompletionScript {
    commands = new LinkedHashMap<>(commands);
  }

  /** The script. */
  public String text() {
    StringBuilder cases = new StringBuilder();
    answers()
        .forEach(
            (answer, asked) ->
                cases.append("    " + String.join(" | ", asked) + ") " + answer + " ;;\n"));
    return TEMPLATE.replace("{program}", program).replace("{cases}", cases);
  }

  /** What is offered, and behind which words; a command's options where nothing else fits. */
  private Map<String, List<String>> answers() {
    Map<String, List<String>> answers = new LinkedHashMap<>();
    String names = String.join(" ", commands.keySet());
    String first = names + " help " + Parameter.HELP.name() + " " + Parameter.VERSION.name();
    add(answers, "' '", first, false);
    add(answers, "'help '*", names, false);
    commands.forEach(
        (name, form) -> {
          for (Parameter<?> each : form.parameters()) {
            if (each.isOption() && each.takesValue()) {
              add(answers, "'" + name + " " + each.name() + "'", words(each), isPath(each));
            }
          }
        });
    commands.forEach(
        (name, form) -> {
          StringJoiner words = new StringJoiner(" ");
          boolean files = false;
          for (Parameter<?> each : form.parameters()) {
            String offered = each.isOption() ? each.name() : words(each);
            if (!offered.isEmpty()) {
              words.add(offered);
            }
            files |= !each.isOption() && isPath(each);
          }
          add(answers, "'" + name + " '*", words.toString(), files);
        });
    return answers;
  }

  private static String words(Parameter<?> parameter) {
    return String.join(" ", parameter.kind().words());
  }

  private static boolean isPath(Parameter<?> parameter) {
    return parameter.kind().isPath();
  }

  private static void add(
      Map<String, List<String>> answers, String asked, String words, boolean files) {
    List<String> said = new ArrayList<>();
    if (!words.isEmpty()) {
      said.add("words='" + words + "'");
    }
    if (files) {
      said.add("files=yes");
    }
    // A case of the shell wants something done.
    String answer = said.isEmpty() ? ":" : String.join(" ", said);
    answers.computeIfAbsent(answer, none -> new ArrayList<>()).add(asked);
  }
}
