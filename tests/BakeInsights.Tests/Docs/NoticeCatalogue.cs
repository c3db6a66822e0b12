using System.Globalization;
using System.Text;
using BakeInsights.TestKit;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace BakeInsights.Tests;

/// <summary>One kind of notice, as the source of the reader words it; what is filled in stands in ‹›.</summary>
internal sealed record NoticeKind(string Code, string Gravity, string Message, string Remedy);

/// <summary>The kinds of notices, read off Notices.cs: the one place that holds all codes and words.</summary>
internal static class NoticeCatalogue
{
    public static IReadOnlyList<NoticeKind> All { get; } =
    [
        .. CSharpSyntaxTree.ParseText(File.ReadAllText(Repository.Path("src/BakeInsights/Journals/Notices.cs"))).GetRoot()
            .DescendantNodes().OfType<ArgumentListSyntax>()
            .Where(list => list.Arguments.Any(IsCode))
            .Select(KindOf)
            .OrderBy(kind => kind.Code, StringComparer.Ordinal),
    ];

    private static NoticeKind KindOf(ArgumentListSyntax list) => new(
        ((LiteralExpressionSyntax)list.Arguments.First(IsCode).Expression).Token.ValueText,
        GravityOf(list),
        Words(list.Arguments[^2].Expression),
        Words(list.Arguments[^1].Expression));

    // The gravity is an argument, or lies in the name of the helper that is called.
    private static string GravityOf(ArgumentListSyntax list)
    {
        var named = list.Arguments.Select(argument => argument.Expression).OfType<MemberAccessExpressionSyntax>()
            .FirstOrDefault(access => access.Expression.ToString() == nameof(Gravity));
        var gravity = named?.Name.ToString() ?? ((list.Parent as InvocationExpressionSyntax)?.Expression.ToString() switch
        {
            "Row" => nameof(Gravity.Refused),
            "Cell" => nameof(Gravity.Unread),
            "Doubt" => nameof(Gravity.Doubted),
            var other => throw new InvalidOperationException($"No gravity is known for {other}."),
        });
        return gravity.ToLowerInvariant();
    }

    private static bool IsCode(ArgumentSyntax argument) =>
        argument.Expression is LiteralExpressionSyntax literal
        && literal.Token.ValueText is { Length: > 3 } text
        && text.Contains('_', StringComparison.Ordinal)
        && text.All(letter => char.IsAsciiLetterUpper(letter) || letter == '_');

    private static string Words(ExpressionSyntax expression) => expression switch
    {
        LiteralExpressionSyntax literal => literal.Token.ValueText,
        BinaryExpressionSyntax sum => Words(sum.Left) + Words(sum.Right),
        InterpolatedStringExpressionSyntax text => string.Concat(text.Contents.Select(part => part switch
        {
            InterpolatedStringTextSyntax plain => plain.TextToken.ValueText,
            InterpolationSyntax hole => NameOf(hole),
            _ => "",
        })),
        MemberAccessExpressionSyntax whole => $"‹{whole.Name.Identifier.ValueText.ToLowerInvariant()}›",
        _ => throw new InvalidOperationException($"{expression} is no text."),
    };

    private static bool IsQuoted(InterpolationSyntax hole) => hole.Parent!.ToString().Contains($"'{hole}'", StringComparison.Ordinal);

    // "{Number(range.UsualLow)}" is filled in with a usual low.
    private static string NameOf(InterpolationSyntax hole)
    {
        var name = hole.Expression.DescendantTokens().Last(token => token.IsKind(SyntaxKind.IdentifierToken)).ValueText;
        var words = new StringBuilder();
        foreach (var letter in name)
        {
            words.Append(char.IsAsciiLetterUpper(letter) && words.Length > 0 ? " " : "").Append(char.ToLower(letter, CultureInfo.InvariantCulture));
        }

        // A unit brings the blank before it along.
        return name == "unit" && !IsQuoted(hole) ? " ‹unit›" : $"‹{words}›";
    }
}
