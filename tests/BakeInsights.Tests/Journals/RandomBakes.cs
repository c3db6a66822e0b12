using System.Collections.Immutable;
using CsCheck;

namespace BakeInsights.Tests;

/// <summary>Bakes with any of the columns in them, anywhere in their ranges.</summary>
internal static class RandomBakes
{
    private const double SecondsInMinute = 60;
    private const int SecondsInDay = 86_400;

    private static readonly Gen<Action<BakeDraft>> Nothing = Gen.Const<Action<BakeDraft>>(_ => { });

    /// <summary>A text as a cell holds it: some letters, signs that CSV and spreadsheets give a meaning, no blank ends.</summary>
    public static Gen<string> Text { get; } = Gen
        .OneOf("a", "Z", "7", "\"", ",", ";", "'", "=", "+", "-", "@", "#", "|", "\t", " ", ".", "\\", "é", "ß", "漢", "🥖", "İ")
        .Array[1, 12].Select(pieces => string.Concat(pieces).Trim()).Where(text => text.Length > 0);

    /// <summary>Up to six bakes, their names different.</summary>
    public static Gen<IReadOnlyList<Bake>> Any { get; } = One.Array[0, 6].Select(makers =>
        (IReadOnlyList<Bake>)[.. makers.Select((make, place) => make(place))]);

    private static Gen<Func<int, Bake>> One => Gen.Select(
        Text, Gen.DateOnly, All(BakeColumns.All.Select(Of).Append(Own).Append(Own)), (id, day, settings) => (Func<int, Bake>)(place =>
        {
            var draft = new BakeDraft($"{place} {id}", day);
            settings.ForEach(set => set(draft));
            return draft.Finish(new SourceLine("made.csv", place + 2));
        }));

    private static Gen<Action<BakeDraft>> Own => Gen.OneOf(
        Nothing, Gen.Select(Text, Text, (name, text) => (Action<BakeDraft>)(draft => draft.Keep("my " + name, text))));

    private static Gen<Action<BakeDraft>> Of(JournalColumn column) => column switch
    {
        QuantityColumn quantity => Gen.OneOf(
            Nothing, Value(quantity).Select(value => (Action<BakeDraft>)(draft => draft.Set(quantity, value)))),
        ChoiceColumn choice => Gen.OneOf(
            Nothing, Gen.OneOf([.. choice.Values]).Select(word => (Action<BakeDraft>)(draft => draft.Set(choice, word)))),
        TextColumn text when text != BakeColumns.Id => Gen.OneOf(
            Nothing, Text.Select(words => (Action<BakeDraft>)(draft => draft.Set(text, words)))),
        _ => Nothing,
    };

    private static Gen<double> Value(QuantityColumn column)
    {
        if (column.Dimension == Dimension.TimeOfDay)
        {
            return Gen.Int[0, SecondsInDay - 1].Select(second => second / SecondsInMinute);
        }

        var inside = Gen.Double[column.Low, column.High];
        var tiny = Gen.Int[1, 12].Select(places => column.Low + Math.Pow(10, -places));
        return Gen.OneOf(inside, inside.Select(value => Math.Ceiling(value)), tiny, Gen.OneOf(column.Low, column.High));
    }

    private static Gen<ImmutableList<T>> All<T>(IEnumerable<Gen<T>> gens) => gens.Aggregate(
        Gen.Const(ImmutableList<T>.Empty), (all, one) => Gen.Select(all, one, (list, item) => list.Add(item)));
}
