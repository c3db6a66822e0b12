(function () {
  // As on the rest of the page: half away from zero, a true minus sign, no minus zero.
  function rounded(value, decimals) {
    var scale = Math.pow(10, decimals);
    var whole = Math.floor(Math.abs(value) * scale + 0.5) / scale;
    return (value < 0 && whole > 0 ? '\u2212' : '') + whole.toFixed(decimals);
  }

  // One more bake by the fit: with m the terms' values, m'b and m'b +- t sqrt(m'Cm + s^2).
  function predicted(model, temperature, hydration) {
    var values = model.terms.map(function (term) {
      return Math.pow(temperature - model.centreTemperature, term.ofTemperature) * Math.pow(hydration - model.centreHydration, term.ofHydration);
    });
    var estimate = 0;
    var variance = 0;
    values.forEach(function (value, i) {
      estimate += value * model.terms[i].coefficient;
      values.forEach(function (other, j) { variance += value * other * model.covariance[i][j]; });
    });
    var reach = model.studentQuantile * Math.hypot(Math.sqrt(Math.max(variance, 0)), model.residualSd);
    return [estimate, estimate - reach, estimate + reach].map(function (value) {
      return (model.isOfLogarithms ? Math.exp(value) : value) * model.unit.factor + model.unit.offset;
    });
  }

  document.querySelectorAll('.bake-what-if:not([data-ready])').forEach(function (place) {
    place.setAttribute('data-ready', '');
    var given = JSON.parse(place.querySelector('script').textContent);
    var sliders = Array.from(place.querySelectorAll('input[type=range]'));

    function setting(name) {
      var slider = place.querySelector('input[data-setting=' + name + ']');
      return slider ? (Number(slider.value) - Number(slider.dataset.offset)) / Number(slider.dataset.factor) : given.fixed[name];
    }

    function show() {
      sliders.forEach(function (slider) {
        var words = rounded(Number(slider.value), Number(slider.dataset.decimals)) + ' ' + slider.dataset.unit;
        slider.setAttribute('aria-valuetext', words);
        slider.closest('.bake-slider').querySelector('.bake-set').textContent = words;
      });
      given.models.forEach(function (model) {
        var shown = predicted(model, setting('dough_temp_c'), setting('hydration_pct'))
          .map(function (value) { return rounded(value, model.unit.decimals); });
        var row = place.querySelector('[data-model=' + model.name + ']');
        row.querySelector('.bake-estimate').textContent = shown[0] + ' ' + model.unit.label;
        row.querySelector('.bake-interval').textContent = shown[1] + ' to ' + shown[2] + ' ' + model.unit.label;
      });
    }

    sliders.forEach(function (slider) {
      slider.disabled = false;
      slider.addEventListener('input', show);
    });
    show();
  });
})();
