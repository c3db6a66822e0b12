namespace BakeInsights;

/// <summary>One line of a formula, with its two percentages, which must never be taken for each other.</summary>
/// <param name="Name">The ingredient.</param>
/// <param name="Role">Where it counts.</param>
/// <param name="Grams">Its mass.</param>
/// <param name="PctOfFlour">Baker's percent: of all flour, a preferment's counted in. The lines add up to more than 100.</param>
/// <param name="PctOfDough">True percent: of the whole dough. The lines of a formula add up to 100.</param>
public sealed record FormulaLine(string Name, IngredientRole Role, double Grams, double PctOfFlour, double PctOfDough);
