namespace GlowMix.Console.Commands;

/// <summary>
/// The scripts for the shells. Each only hands over the words typed so far and shows what the program answers, so that all four
/// complete alike and know what the program knows.
/// </summary>
internal static class CompletionScripts
{
    /// <summary>Shells that there is a script for.</summary>
    public static IReadOnlyList<string> Shells { get; } = ["bash", "zsh", "fish", "powershell"];

    /// <summary>The script of a shell, or null.</summary>
    public static string? Of(string shell) =>
        shell switch
        {
            "bash" => Bash,
            "zsh" => Zsh,
            "fish" => Fish,
            "powershell" or "pwsh" => PowerShell,
            _ => null,
        };

    // A folder's slash, or the sign between key and value, at the end is the sign to go on without a blank.
    private const string Bash = """
        # Completion of glowmix for bash. For this session:  source <(glowmix completion bash)
        # For good, put that line into ~/.bashrc.
        _glowmix() {
            local line words=("${COMP_WORDS[@]:1:COMP_CWORD}")
            COMPREPLY=()
            while IFS= read -r line; do
                COMPREPLY+=("$line")
            done < <("${COMP_WORDS[0]}" completion words -- "${words[@]}" 2>/dev/null)
            if [[ ${#COMPREPLY[@]} -eq 1 && ${COMPREPLY[0]} == *[/=] ]]; then
                compopt -o nospace
            fi
            local i
            for i in "${!COMPREPLY[@]}"; do
                COMPREPLY[i]=$(printf '%q' "${COMPREPLY[i]}")
            done
        }
        complete -F _glowmix glowmix

        """;

    private const string Zsh = """
        #compdef glowmix
        # Completion of glowmix for zsh. For this session:  source <(glowmix completion zsh)
        # For good, write it to a file _glowmix in a folder of $fpath, before compinit.
        _glowmix() {
            local -a found folders plain
            local one
            found=("${(@f)$("${words[1]}" completion words -- "${(@)words[2,CURRENT]}" 2>/dev/null)}")
            for one in $found; do
                if [[ $one == *[/=] ]]; then folders+=("$one"); else plain+=("$one"); fi
            done
            (( ${#plain} )) && compadd -- $plain
            (( ${#folders} )) && compadd -S '' -- $folders
        }
        if [[ $funcstack[1] == _glowmix ]]; then
            _glowmix "$@"
        else
            compdef _glowmix glowmix
        fi

        """;

    private const string Fish = """
        # Completion of glowmix for fish. For this session:  glowmix completion fish | source
        # For good:  glowmix completion fish > ~/.config/fish/completions/glowmix.fish
        function __glowmix_words
            set -l typed (commandline -opc) (commandline -ct)
            $typed[1] completion words -- $typed[2..-1] 2>/dev/null
        end
        complete -c glowmix -f -a '(__glowmix_words)'

        """;

    private const string PowerShell = """
        # Completion of glowmix for PowerShell. For this session:
        #   glowmix completion powershell | Out-String | Invoke-Expression
        # For good, put that line into the file that $PROFILE names.
        Register-ArgumentCompleter -Native -CommandName glowmix -ScriptBlock {
            param($word, $line, $cursor)
            $typed = @($line.CommandElements | Select-Object -Skip 1 |
                Where-Object { $_.Extent.StartOffset -lt $cursor } | ForEach-Object { "$_" })
            if ($word -eq '') { $typed += '' }
            $program = "$($line.CommandElements[0])"
            & $program completion words '--' @typed 2>$null | ForEach-Object {
                $text = if ($_ -match '\s') { "'$_'" } else { $_ }
                [System.Management.Automation.CompletionResult]::new($text, $_, 'ParameterValue', $_)
            }
        }

        """;
}
