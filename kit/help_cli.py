"""`lessonkit help` and `lessonkit completion`: the reference in the terminal, and what Tab completes there."""

from __future__ import annotations

import argparse
from typing import Any

from kit.errors import KitError

SHELLS = ("bash", "zsh", "fish")
_BASH = """\
# Completion for lessonkit. For this shell and the ones to come:
#     mkdir -p ~/.local/share/bash-completion/completions
#     lessonkit completion bash > ~/.local/share/bash-completion/completions/lessonkit
_lessonkit() {
    local word="${COMP_WORDS[COMP_CWORD]}" before="${COMP_WORDS[COMP_CWORD-1]}" command="${COMP_WORDS[1]}" words=""
    if [ "$COMP_CWORD" -eq 1 ]; then
        COMPREPLY=($(compgen -W "%(commands)s" -- "$word"))
        return
    fi
    case "$command:$before" in
%(values)s
    esac
    if [ -n "$words" ]; then
        COMPREPLY=($(compgen -W "$words" -- "$word"))
        return
    fi
    case "$command" in
%(options)s
    esac
    case "$word" in
        -*) COMPREPLY=($(compgen -W "$words" -- "$word")) ;;
        *) if [ "$command" = help ]; then
               COMPREPLY=($(compgen -W "%(topics)s" -- "$word"))
           else
               COMPREPLY=($(compgen -f -- "$word"))
           fi ;;
    esac
}
complete -o filenames -F _lessonkit lessonkit
"""
_ZSH = """\
# Completion for lessonkit: put  source <(lessonkit completion zsh)  into ~/.zshrc
autoload -Uz compinit bashcompinit
compinit
bashcompinit
"""
_FISH = """\
# Completion for lessonkit: lessonkit completion fish > ~/.config/fish/completions/lessonkit.fish
"""


def add_help(commands: Any) -> None:
    """Add the two commands to the parser's `commands`."""
    show = commands.add_parser(
        "help",
        help="the reference: a verb, or what does a thing of the trade",
        description="Show the reference's entry of a verb (set_band), which verbs do a thing of the trade (curved "
        "hem), what a lesson or the kit offers (preset, canvas), or how a command is called (build).",
    )
    show.add_argument("topic", nargs="*", metavar="TOPIC", help="every verb by subject, when left out")
    show.add_argument("--language", default="en", metavar="CODE", help="of the headings: en, de, es or fr")
    show.set_defaults(run=_help, every=commands.choices)
    completion = commands.add_parser(
        "completion",
        help="what Tab completes in your shell",
        description="Print a script that lets Tab complete commands, options and topics. Its first lines say where to "
        "put it.",
    )
    completion.add_argument("shell", choices=SHELLS, metavar="SHELL", help=", ".join(SHELLS))
    completion.set_defaults(run=_completion, every=commands.choices)


def _help(options: argparse.Namespace) -> int:
    from kit.language import speaking
    from kit.reference.told import help_on

    topic = " ".join(options.topic)
    if topic in options.every:
        print(options.every[topic].format_help(), end="")
        return 0
    with speaking(options.language):
        try:
            print(help_on(topic))
        except KitError as error:  # said in that language, and here
            print(f"lessonkit: {error}")
            return 2
    return 0


def _completion(options: argparse.Namespace) -> int:
    print(script(options.shell, options.every), end="")
    return 0


def script(shell: str, commands: dict[str, argparse.ArgumentParser]) -> str:
    """The completion script of a shell for these commands."""
    if shell == "fish":
        return _FISH + "".join(f"{line}\n" for line in _fish(commands))
    values, options = [], []
    for name, parser in commands.items():
        words: list[str] = []
        for action in parser._actions:
            words += action.option_strings
            if action.choices and action.option_strings:
                given = "|".join(f"{name}:{option}" for option in action.option_strings)
                values.append(f'        {given}) words="{_words(action)}" ;;')
            elif action.choices:
                values.append(f'        {name}:{name}) words="{_words(action)}" ;;')
        options.append(f'        {name}) words="{" ".join(words)}" ;;')
    filled = {
        "commands": " ".join(commands),
        "values": "\n".join(values),
        "options": "\n".join(options),
        "topics": " ".join(_topics()),
    }
    return (_ZSH if shell == "zsh" else "") + _BASH % filled


def _fish(commands: dict[str, argparse.ArgumentParser]) -> list[str]:
    alone = "not __fish_seen_subcommand_from " + " ".join(commands)
    lines = [f"complete -c lessonkit -n '{alone}' -f -a '{name}'" for name in commands]
    for name, parser in commands.items():
        here = f"complete -c lessonkit -n '__fish_seen_subcommand_from {name}'"
        for action in parser._actions:
            given = "".join(f" -l {option[2:]}" for option in action.option_strings if option.startswith("--"))
            if given and action.dest != "help":
                lines.append(f"{here}{given}" + (f" -x -a '{_words(action)}'" if action.choices else ""))
            elif action.choices:
                lines.append(f"{here} -f -a '{_words(action)}'")
    lines.append(f"complete -c lessonkit -n '__fish_seen_subcommand_from help' -f -a '{' '.join(_topics())}'")
    return lines


def _words(action: argparse.Action) -> str:
    return " ".join(str(one) for one in action.choices or ())


def _topics() -> list[str]:
    from kit.reference.entry import entries

    return sorted({entry.verb.name for entry in entries().values()})
