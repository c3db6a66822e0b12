using System.Globalization;
using System.Text;

namespace BakeInsights;

/// <summary>Brings signs that look alike into one form before a text is taken apart.</summary>
internal static class KitchenText
{
    /// <summary>
    /// The text with a plain space for each blank of Unicode, a plain minus, a plain fraction bar, one degree sign, each
    /// vulgar fraction written out with a space before it ("2¼" becomes "2 1/4"), and nothing that takes no room.
    /// </summary>
    public static string Plain(string text)
    {
        if (Ascii.IsValid(text))
        {
            return text.Trim();
        }

        var plain = new StringBuilder(text.Length + 4);
        foreach (var sign in text)
        {
            plain.Append(Plain(sign));
        }

        return plain.ToString().Trim();
    }

    private static string Plain(char sign) => sign switch
    {
        '\u2212' => "-", // minus
        '\u2044' => "/", // fraction slash
        '\u00BA' or '\u02DA' => "°", // the ordinal and the ring, which keyboards put in its place
        _ when char.IsWhiteSpace(sign) => " ",
        _ when CharUnicodeInfo.GetUnicodeCategory(sign) == UnicodeCategory.Format => "",
        _ when VulgarFraction(sign) is { } fraction => " " + fraction,
        _ => sign.ToString(),
    };

    // The compatibility form of "¼" is 1, fraction slash, 4. Superscripts have a form too, but no slash in it.
    private static string? VulgarFraction(char sign)
    {
        if (CharUnicodeInfo.GetUnicodeCategory(sign) != UnicodeCategory.OtherNumber)
        {
            return null;
        }

        var form = sign.ToString().Normalize(NormalizationForm.FormKC);
        var slash = form.IndexOf('\u2044', StringComparison.Ordinal);
        return slash > 0 && slash < form.Length - 1 ? form.Replace('\u2044', '/') : null;
    }
}
