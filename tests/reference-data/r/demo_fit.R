# Fits the two regressions of the demo journal in base R, apart from our own code, and writes demo_fit.csv beside itself.
# Run from the top of the checkout: Rscript tests/reference-data/r/demo_fit.R
folder <- "tests/reference-data/r"
bakes <- read.csv("data-demo/millpond-lane/bakes.csv", colClasses = c(baked_on = "character"))
bakes <- bakes[!is.na(as.Date(bakes$baked_on, format = "%Y-%m-%d")), ]

bakes$h <- 100 * bakes$water_g / bakes$flour_g - 65
bakes$t <- bakes$dough_temp_c - 24
bakes$salt <- 100 * bakes$salt_g / bakes$flour_g
bakes$log_yeast <- log(100 * bakes$yeast_g / bakes$flour_g)
bakes$minutes <- ifelse(is.na(bakes$rise_not_ready_min), bakes$rise_min, (bakes$rise_not_ready_min + bakes$rise_min) / 2)
bakes$volume <- bakes$loaf_volume_ml / bakes$loaf_g

level <- 0.95
rows <- list()
note <- function(model, quantity, term, value)
  rows[[length(rows) + 1]] <<- c(model, quantity, term, format(value, digits = 17, scientific = TRUE))

describe <- function(model, fit, names) {
  note(model, "used", "", nobs(fit))
  note(model, "residual_sd", "", sigma(fit))
  note(model, "r_squared", "", summary(fit)$r.squared)
  note(model, "largest_leverage", "", max(hatvalues(fit)))
  standardised <- rstandard(fit)
  note(model, "largest_residual", "", standardised[which.max(abs(standardised))])
  found <- summary(fit)$coefficients
  ends <- confint(fit, level = level)
  for (i in seq_along(names)) {
    note(model, "estimate", names[i], found[i, 1])
    note(model, "standard_error", names[i], found[i, 2])
    note(model, "p", names[i], found[i, 4])
    note(model, "low", names[i], ends[i, 1])
    note(model, "high", names[i], ends[i, 2])
  }
}

# Means and single bakes at a setting; "shown" turns the fit's unit into the journal's.
expect <- function(model, fit, name, setting, shown) {
  columns <- blocks(fit, setting)
  middle <- sum(columns * coef(fit))
  error <- sqrt(drop(columns %*% vcov(fit) %*% t(columns)))
  q <- qt(1 - (1 - level) / 2, df.residual(fit))
  note(model, "expected", name, shown(middle))
  note(model, "mean_low", name, shown(middle - q * error))
  note(model, "mean_high", name, shown(middle + q * error))
  note(model, "prediction_low", name, shown(middle - q * sqrt(error^2 + sigma(fit)^2)))
  note(model, "prediction_high", name, shown(middle + q * sqrt(error^2 + sigma(fit)^2)))
}

# Bakers as blocks with effects that sum to zero: a setting stands for the mean baker, as a fit's coefficients weigh them.
blocks <- function(fit, setting) {
  columns <- model.matrix(delete.response(terms(fit)), cbind(setting, baker = levels(fit$model$baker)[1]), xlev = fit$xlevels)
  columns[, grepl("baker", colnames(columns))] <- 0
  columns
}
bakes$baker <- factor(bakes$baker)
options(contrasts = c("contr.sum", "contr.poly"))

rise <- lm(log(minutes) ~ t + log_yeast + h + salt + baker, data = bakes)
describe("rise_time", rise, c("intercept", "dough_temperature", "log_yeast", "hydration", "salt"))
expect("rise_time", rise, "centre", data.frame(t = 0, h = 0, log_yeast = 0, salt = 2), exp)
expect("rise_time", rise, "cool", data.frame(t = -3, h = 5, log_yeast = log(0.8), salt = 1.8), exp)

volume <- lm(volume ~ h + t + I(h^2) + I(t^2) + I(h * t) + baker, data = bakes)
describe("loaf_volume", volume, c("intercept", "hydration", "dough_temperature", "hydration_squared",
  "dough_temperature_squared", "hydration_x_dough_temperature"))
expect("loaf_volume", volume, "centre", data.frame(t = 0, h = 0), identity)
expect("loaf_volume", volume, "cool", data.frame(t = -3, h = 5), identity)

# The hydration of most volume at t = 0 is h = -b1 / (2 b2). By Fieller's theorem its interval holds every x for which
# b1 + 2 b2 x is within t standard errors of zero: the roots of (b1 + 2 b2 x)^2 = q (v11 + 4 v12 x + 4 v22 x^2).
b <- coef(volume)[c("h", "I(h^2)")]
v <- vcov(volume)[c("h", "I(h^2)"), c("h", "I(h^2)")]
q <- qt(1 - (1 - level) / 2, df.residual(volume))^2
a2 <- 4 * (b[2]^2 - q * v[2, 2])
a1 <- 4 * (b[1] * b[2] - q * v[1, 2])
a0 <- b[1]^2 - q * v[1, 1]
ends <- 65 + sort((-a1 + c(-1, 1) * sqrt(a1^2 - 4 * a2 * a0)) / (2 * a2))
note("loaf_volume", "optimum", "hydration", 65 - b[1] / (2 * b[2]))
note("loaf_volume", "optimum_low", "hydration", ends[1])
note("loaf_volume", "optimum_high", "hydration", ends[2])

# Q10 goes one way with the slope, so the ends of the slope's interval give its own.
slope <- c(coef(rise)["t"], rev(confint(rise, "t", level = level)))
for (i in 1:3) note("rise_time", c("q10", "q10_low", "q10_high")[i], "", exp(-10 * slope[i]))

table <- as.data.frame(do.call(rbind, rows))
names(table) <- c("model", "quantity", "term", "value")
write.csv(table, file.path(folder, "demo_fit.csv"), row.names = FALSE, quote = FALSE)
