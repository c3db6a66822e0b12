"""The same work in Python: read the journal, fit both regressions with statsmodels."""
import sys

import numpy as np
import pandas as pd
import statsmodels.api as sm

d = pd.read_csv(sys.argv[1])
t = d.dough_temp_c - 24
h = 100 * d.water_g / d.flour_g - 65
rise = np.column_stack([np.ones(len(d)), t, np.log(100 * d.yeast_g / d.flour_g), h, 100 * d.salt_g / d.flour_g])
volume = np.column_stack([np.ones(len(d)), h, t, h * h, t * t, h * t])
for response, columns in ((np.log(d.rise_min), rise), (d.loaf_volume_ml / d.loaf_g, volume)):
    fit = sm.OLS(response, columns).fit()
    print(np.column_stack([fit.params, fit.bse]))
