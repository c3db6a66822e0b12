(function () {
  if (!window.Plotly) { return; }
  document.querySelectorAll('.bake-chart:not([data-drawn])').forEach(function (chart) {
    var figure = JSON.parse(chart.querySelector('script').textContent);
    chart.setAttribute('data-drawn', '');
    chart.textContent = '';
    window.Plotly.newPlot(chart, figure.data, figure.layout, figure.config);

    // A drawing that knows its own shape can be scaled by a style sheet: paper has another width than the screen.
    function fitPaper() {
      chart.querySelectorAll('svg.main-svg').forEach(function (drawing) {
        drawing.setAttribute('viewBox', '0 0 ' + drawing.getAttribute('width') + ' ' + drawing.getAttribute('height'));
      });
      chart.style.setProperty('--bake-shape', chart.clientWidth + ' / ' + chart.clientHeight);
    }
    chart.on('plotly_afterplot', fitPaper);
    fitPaper();

    var save = document.createElement('button');
    save.type = 'button';
    save.className = 'bake-save';
    save.textContent = 'Save as SVG';
    save.addEventListener('click', function () {
      // The caption stands outside of the drawing; a file of its own takes it along, and is wide enough for it.
      var caption = chart.parentNode.querySelector('figcaption').textContent;
      var words = caption.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
      var layout = Object.assign({}, figure.layout, {
        title: { text: words, x: 0.01, xanchor: 'left', font: { size: 15 } },
        margin: Object.assign({}, figure.layout.margin, { t: 56 })
      });
      window.Plotly.downloadImage(
        { data: figure.data, layout: layout, config: figure.config },
        Object.assign({ width: Math.max(chart.clientWidth, 800), height: chart.clientHeight }, figure.config.toImageButtonOptions));
    });
    chart.insertAdjacentElement('afterend', save);
  });
})();
