using System.Text;

namespace BakeInsights;

/// <summary>The name of a column as its file has it, brought to the form of canonical names.</summary>
/// <param name="Plain">In small letters, words joined by underscores: "dough_temp" of "Dough temp (°F)".</param>
/// <param name="Bracket">What stands in brackets behind the name, in small letters; null without brackets.</param>
internal readonly record struct HeaderText(string Plain, string? Bracket)
{
    private const char Joint = '_';

    /// <summary>Letter case, blanks, hyphens and slashes are no difference; brackets at the end are taken off.</summary>
    public static HeaderText Of(string header)
    {
        var text = header.Trim();
        var opens = text.Length > 0 && text[^1] is ')' or ']' ? text.LastIndexOf(text[^1] == ')' ? '(' : '[') : -1;
        return opens > 0
            ? new(Join(text[..opens]), text[(opens + 1)..^1].Trim().ToLowerInvariant())
            : new(Join(text), null);
    }

    /// <summary>Whether the text is this name with a unit behind it, or nothing; the unit's text is empty for nothing.</summary>
    public bool IsWithUnit(string name, out string unit)
    {
        unit = Bracket ?? "";
        if (Plain == name)
        {
            return true;
        }

        if (Bracket is not null || Plain.Length <= name.Length + 1 || Plain[name.Length] != Joint || !Plain.StartsWith(name, StringComparison.Ordinal))
        {
            return false;
        }

        unit = Plain[(name.Length + 1)..];
        return true;
    }

    private static string Join(string text)
    {
        var plain = new StringBuilder(text.Length);
        var isPending = false;
        foreach (var letter in text.Trim())
        {
            if (char.IsWhiteSpace(letter) || letter is '-' or '/')
            {
                isPending = true;
                continue;
            }

            if (isPending && letter != Joint && (plain.Length == 0 || plain[^1] != Joint))
            {
                plain.Append(Joint);
            }

            isPending = false;
            plain.Append(char.ToLowerInvariant(letter));
        }

        return plain.ToString();
    }
}
