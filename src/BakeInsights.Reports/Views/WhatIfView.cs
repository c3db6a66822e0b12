namespace BakeInsights.Reports;

/// <summary>What one more bake would do at another dough temperature and hydration, by the fits, to play with.</summary>
public static class WhatIfView
{
    // Common practice, no source: a probe and a scale let a kitchen hit a dough this closely.
    private const double StepC = 0.5;
    private const double StepF = 1;
    private const double StepPct = 0.5;

    /// <summary>
    /// Sliders within what was baked, and the same numbers at nine doughs as a table. All other settings are those of
    /// each answer's typical dough; intervals are those of one more bake.
    /// </summary>
    /// <param name="rise">What the journal says of the rise time.</param>
    /// <param name="volume">What it says of the loaf's volume.</param>
    /// <param name="units">The units to speak in.</param>
    public static View Of(RiseTimeAnswer rise, LoafVolumeAnswer volume, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(rise);
        ArgumentNullException.ThrowIfNull(volume);
        var (ofRise, ofVolume) = (AnswerPolynomial.Of(rise), AnswerPolynomial.Of(volume));
        var temperature = Slider(Measures.DoughTemperature, units == UnitSystem.Us ? StepF : StepC, term => term.TemperaturePower);
        var hydration = Slider(Measures.Hydration, StepPct, term => term.HydrationPower);
        var (celsius, percent) = (Fixed(Measures.DoughTemperature, ModelAnswer.CentreTemperatureC), Fixed(Measures.Hydration, ModelAnswer.CentreHydrationPct));
        var heading = new ViewHeading("What if the dough were warmer, or wetter?");
        if (temperature is null && hydration is null)
        {
            return new View([heading, new ViewParagraph("The bakes of the two fits share no range of dough temperature or hydration to move in.")]);
        }

        var doughs = from t in Places(temperature, celsius) from h in Places(hydration, percent) select (Celsius: t, Percent: h);
        return new View(
        [
            heading,
            new ViewParagraph(
                "What one more bake would do by the two fits, within what was baked, all else as in the journal's typical dough. "
                + "Of 100 such bakes, 95 fall in the interval."),
            new ViewWhatIf(
                [.. new[] { temperature, hydration }.OfType<WhatIfSlider>()],
                [
                    new(Measures.RiseTime, UnitOf(Measures.RiseTime), ofRise, At(rise.Typical, rise.At, StartOf(temperature, celsius), StartOf(hydration, percent))),
                    new(Measures.SpecificVolume, UnitOf(Measures.SpecificVolume), ofVolume, At(volume.Typical, volume.At, StartOf(temperature, celsius), StartOf(hydration, percent))),
                ],
                celsius,
                percent),
            TableOf(rise, volume, doughs, new Figures(units)),
        ]);

        DisplayUnit UnitOf(Measure measure) => DisplayUnit.For(measure.Dimension, units);

        // The median of the rise time's bakes: the two fits rest on nearly the same ones.
        double Fixed(Measure setting, double centre) => rise.Typical[setting] ?? volume.Typical[setting] ?? centre;

        // Within what both fits have seen, as far as they speak of the setting at all; ends rounded inwards.
        WhatIfSlider? Slider(Measure setting, double step, Func<PolynomialTerm, int> powerOf)
        {
            SettingRange[] ranges =
            [
                .. new (ModelAnswer Answer, AnswerPolynomial Polynomial)[] { (rise, ofRise), (volume, ofVolume) }
                    .Where(each => each.Polynomial.Terms.Any(term => powerOf(term) > 0))
                    .Select(each => each.Answer.RangeOf(setting)!),
            ];
            if (ranges.Length == 0)
            {
                return null;
            }

            var unit = UnitOf(setting);
            var least = Math.Ceiling(unit.Value(ranges.Max(range => range.Least)) / step) * step;
            var most = Math.Floor(unit.Value(ranges.Min(range => range.Most)) / step) * step;
            var start = Math.Clamp(Math.Round(unit.Value(Fixed(setting, ranges[0].Middle)) / step) * step, least, Math.Max(least, most));
            return most > least ? new WhatIfSlider(setting, unit, least, most, step, start) : null;
        }
    }

    private static CurvePoint At(DoughSettings typical, Func<DoughSettings, CurvePoint> answer, double celsius, double percent) =>
        answer(typical.With(Measures.DoughTemperature, celsius).With(Measures.Hydration, percent));

    private static double StartOf(WhatIfSlider? slider, double otherwise) => slider?.Canonical(slider.Start) ?? otherwise;

    private static double[] Places(WhatIfSlider? slider, double otherwise)
    {
        if (slider is null)
        {
            return [otherwise];
        }

        var middle = slider.Least + (Math.Round((slider.Most - slider.Least) / 2 / slider.Step) * slider.Step);
        return [.. new[] { slider.Least, middle, slider.Most }.Distinct().Select(slider.Canonical)];
    }

    private static ViewTable TableOf(
        RiseTimeAnswer rise, LoafVolumeAnswer volume, IEnumerable<(double Celsius, double Percent)> doughs, Figures figures) => new(
        "The same at some doughs: expected, and the interval of one more bake (95 %).",
        [
            new ViewColumn(figures.TitleOf(Measures.DoughTemperature), true),
            new ViewColumn(figures.TitleOf(Measures.Hydration), true),
            new ViewColumn(figures.TitleOf(Measures.RiseTime), true),
            new ViewColumn("one more bake", true),
            new ViewColumn(figures.TitleOf(Measures.SpecificVolume), true),
            new ViewColumn("one more bake", true),
        ],
        [
            .. doughs.Select(dough => (IReadOnlyList<string>)
            [
                figures.Bare(Dimension.Temperature, dough.Celsius),
                figures.Bare(Dimension.Percent, dough.Percent),
                .. Cells(At(rise.Typical, rise.At, dough.Celsius, dough.Percent), figures.UnitOf(Dimension.Duration)),
                .. Cells(At(volume.Typical, volume.At, dough.Celsius, dough.Percent), figures.UnitOf(Dimension.SpecificVolume)),
            ]),
        ]);

    private static IEnumerable<string> Cells(CurvePoint point, DisplayUnit unit) =>
        [Figures.Rounded(unit.Value(point.Estimate), unit.Decimals), WhatIfHtml.IntervalOf(point, unit)];
}
