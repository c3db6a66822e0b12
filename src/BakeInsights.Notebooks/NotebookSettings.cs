using System.Collections.Immutable;
using System.Globalization;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace BakeInsights.Notebooks;

/// <summary>
/// A notebook's settings: the variables that its cell tagged <c>bake-settings</c> declares with a plain value, such as
/// <c>var journal = "../data-demo/school";</c>.
/// </summary>
public static class NotebookSettings
{
    /// <summary>The tag of the cell that holds the settings.</summary>
    public const string CellTag = "bake-settings";

    private static readonly CSharpParseOptions Script = new(kind: Microsoft.CodeAnalysis.SourceCodeKind.Script);

    /// <summary>The names of the settings, in the order of the cell; empty if there is no such cell.</summary>
    public static ImmutableArray<string> Names(NotebookDocument notebook)
    {
        ArgumentNullException.ThrowIfNull(notebook);
        return Cell(notebook) is { } cell ? [.. Declared(cell.Source).Select(d => d.Identifier.Text)] : [];
    }

    /// <summary>The settings with their values as a person writes them; empty if there is no such cell.</summary>
    public static ImmutableArray<(string Name, string Value)> Values(NotebookDocument notebook)
    {
        ArgumentNullException.ThrowIfNull(notebook);
        return Cell(notebook) is { } cell
            ? [.. Declared(cell.Source).Select(d => (d.Identifier.Text, Plain(d.Initializer!.Value)))]
            : [];
    }

    /// <summary>The notebook with other values in its settings.</summary>
    /// <param name="notebook">The notebook.</param>
    /// <param name="values">
    /// The new values by the settings' names, as a person writes them: text as it is, a number with a point, true or
    /// false.
    /// </param>
    /// <exception cref="NotebookException">
    /// The notebook has no such setting or no settings at all, or a value does not fit.
    /// </exception>
    public static NotebookDocument Apply(NotebookDocument notebook, IReadOnlyDictionary<string, string> values)
    {
        ArgumentNullException.ThrowIfNull(notebook);
        ArgumentNullException.ThrowIfNull(values);
        if (values.Count == 0)
        {
            return notebook;
        }

        var cell = Cell(notebook) ?? throw new NotebookException(
            $"The notebook has no settings: tag the cell that declares them {CellTag}, or run it without settings.");
        var declared = Declared(cell.Source);
        foreach (var name in values.Keys.Where(name => declared.All(d => d.Identifier.Text != name)))
        {
            throw new NotebookException(
                $"The notebook has no setting {name}: it has {string.Join(", ", declared.Select(d => d.Identifier.Text))}.");
        }

        var source = cell.Source;

        // From the last to the first, so that the places of the earlier ones stay right.
        foreach (var declaration in declared.Where(d => values.ContainsKey(d.Identifier.Text)).Reverse())
        {
            var literal = declaration.Initializer!.Value;
            var replacement = Literal(declaration, values[declaration.Identifier.Text]);
            source = source[..literal.SpanStart] + replacement + source[literal.Span.End..];
        }

        return notebook.WithCells(notebook.Cells.Replace(cell, cell with { Source = source }));
    }

    private static NotebookCell? Cell(NotebookDocument notebook) =>
        notebook.Cells.FirstOrDefault(cell => cell.IsCode && cell.Tags.Contains(CellTag));

    private static ImmutableArray<VariableDeclaratorSyntax> Declared(string source) =>
    [
        .. CSharpSyntaxTree.ParseText(source, Script).GetRoot().DescendantNodes()
            .OfType<VariableDeclaratorSyntax>()
            .Where(d => d.Initializer is { Value: var value } && IsLiteral(value)),
    ];

    private static string Plain(ExpressionSyntax value) => value.Kind() switch
    {
        SyntaxKind.StringLiteralExpression => ((LiteralExpressionSyntax)value).Token.ValueText,
        SyntaxKind.NullLiteralExpression => "",
        _ => value.ToString(),
    };

    private static bool IsLiteral(ExpressionSyntax value) =>
        value is LiteralExpressionSyntax
        || (value is PrefixUnaryExpressionSyntax { Operand: LiteralExpressionSyntax } sign
            && sign.Kind() == SyntaxKind.UnaryMinusExpression);

    private static string Literal(VariableDeclaratorSyntax declaration, string value)
    {
        var name = declaration.Identifier.Text;
        var written = declaration.Initializer!.Value;
        switch (written.Kind())
        {
            case SyntaxKind.TrueLiteralExpression or SyntaxKind.FalseLiteralExpression:
                return bool.TryParse(value, out var flag)
                    ? flag ? "true" : "false"
                    : throw new NotebookException($"{name}={value} does not fit: {name} is true or false.");
            case SyntaxKind.NumericLiteralExpression or SyntaxKind.UnaryMinusExpression:
                return Number(declaration, value);
            default:
                return SymbolDisplay.FormatLiteral(value, quote: true);
        }
    }

    private static string Number(VariableDeclaratorSyntax declaration, string value)
    {
        var name = declaration.Identifier.Text;
        var type = NumberType(declaration);
        var style = type is "double" or "float" or "decimal"
            ? NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint
            : NumberStyles.AllowLeadingSign;
        if (!decimal.TryParse(value, style, CultureInfo.InvariantCulture, out var number))
        {
            var wanted = style == NumberStyles.AllowLeadingSign ? "whole number" : "number with a point";
            throw new NotebookException($"{name}={value} does not fit: {name} is a {wanted}.");
        }

        // "6" for a 5.0 would turn the variable into an int and its quotients into whole numbers.
        var suffix = type switch { "double" => "d", "float" => "f", "decimal" => "m", "long" => "L", _ => "" };
        return number.ToString(CultureInfo.InvariantCulture) + suffix;
    }

    private static string NumberType(VariableDeclaratorSyntax declaration)
    {
        var type = ((VariableDeclarationSyntax)declaration.Parent!).Type.ToString().TrimEnd('?');
        return type != "var" ? type : declaration.Initializer!.Value.DescendantTokens().Last().Value switch
        {
            double => "double",
            float => "float",
            decimal => "decimal",
            long => "long",
            _ => "int",
        };
    }
}
