# Fits both rise curves in base R, apart from our own code, and writes rise_curves.csv beside itself: the doughs of the
# demo journal, and Gause's yeast (1932) counted as the rise of a dough of size 1.
# Run from the top of the checkout: Rscript tests/reference-data/r/rise_curves.R
folder <- "tests/reference-data/r"
rises <- list(
  Gompertz = quote(A * exp(-exp(mu * exp(1) / A * (lag - t) + 1))),
  logistic = quote(A / (1 + exp(4 * mu / A * (lag - t) + 2))))
# The lag by the minute of doubling, for the doubling's own profile.
lags <- list(
  Gompertz = quote((two - A / (mu * exp(1)) * (1 - log(-log(1 / A))))),
  logistic = quote((two - A / (4 * mu) * (2 - log(A - 1)))))
tight <- nls.control(tol = 1e-9, maxiter = 1000, minFactor = 1e-12, warnOnly = FALSE)

fit <- function(rise, d, start, held = list()) {
  expression <- do.call(substitute, list(call("*", quote(S), call("+", 1, rise)), held))
  f <- deriv(expression, names(start), c(names(start), "t"))
  call <- as.call(lapply(c("f", names(start), "t"), as.name))
  formula <- as.formula(call("~", quote(y), call))
  nls(formula, d, start = start, control = tight)
}

# The ends of a profile interval: the least sum of squares with the parameter held exceeds the least of all by t t s s.
ends <- function(rise, d, model, name) {
  b <- as.list(coef(model)); e <- summary(model)$coefficients[name, 2]
  limit <- qt(0.975, df.residual(model))^2 * summary(model)$sigma^2
  one <- function(direction) {
    near <- b[names(b) != name]
    excess <- function(value) {
      found <- fit(rise, d, near, setNames(list(value), name))
      near <<- as.list(coef(found))
      deviance(found) - deviance(model) - limit
    }
    inside <- b[[name]]; step <- e
    for (k in 1:400) {
      outside <- inside + direction * step / 4
      at <- tryCatch(excess(outside), error = function(problem) NA)
      if (is.na(at)) return(NA)
      if (at > 0) return(uniroot(excess, sort(c(inside, outside)), tol = 1e-11)$root)
      inside <- outside
    }
    NA
  }
  c(one(-1), one(1))
}

rows <- list()
note <- function(case, curve, quantity, value) if (!is.na(value))
  rows[[length(rows) + 1]] <<- c(case, curve, quantity, format(value, digits = 15, scientific = TRUE))

describe <- function(case, d) {
  for (curve in names(rises)) {
    top <- max(d$y) / d$y[1] - 1
    slope <- max(diff(d$y, 2) / diff(d$t, 2)) / d$y[1]
    model <- NULL
    for (share in c(1.02, 1.1, 1.3)) for (wait in c(0, 0.1, 0.2)) if (is.null(model))
      model <- tryCatch(fit(rises[[curve]], d, list(S = d$y[1], A = share * top, mu = slope, lag = wait * max(d$t))),
                        error = function(problem) NULL)
    n <- nrow(d); k <- 5
    note(case, curve, "used", n)
    # Sizes counted in first readings, as the criterion goes with the unit.
    note(case, curve, "aicc", -2 * as.numeric(logLik(model)) - 2 * n * log(d$y[1]) + 2 * k * n / (n - k - 1))
    note(case, curve, "residual_sd", summary(model)$sigma)
    for (name in c("S", "A", "mu", "lag")) {
      note(case, curve, name, coef(model)[[name]])
      if (name == "S") next
      both <- ends(rises[[curve]], d, model, name)
      note(case, curve, paste(name, "low"), both[1]); note(case, curve, paste(name, "high"), both[2])
    }
    b <- as.list(coef(model))
    if (b$A > 1) {
      rise <- do.call(substitute, list(rises[[curve]], list(lag = lags[[curve]])))
      wait <- -eval(lags[[curve]], c(list(two = 0), b))
      doubled <- fit(rise, d, list(S = b$S, A = b$A, mu = b$mu, two = b$lag + wait))
      note(case, curve, "two", coef(doubled)[["two"]])
      both <- ends(rise, d, doubled, "two")
      note(case, curve, "two low", both[1])
      if (isTRUE(ends(rises[[curve]], d, model, "A")[1] > 1)) note(case, curve, "two high", both[2])
    }
  }
}

journal <- read.csv("data-demo/millpond-lane/rise.csv")
for (d in split(journal, paste(journal$bake_id, journal$stage))) {
  d$y <- ifelse(is.na(d$height_mm), d$volume_ml, d$height_mm); d$t <- d$minutes
  top <- which.max(d$y)
  if (tail(d$y, 1) < d$y[top] - 0.1 * (d$y[top] - d$y[1])) d <- d[seq_len(top), ]
  if (nrow(d) >= 7) describe(paste(d$bake_id[1], d$stage[1]), d[, c("t", "y")])
}
gause <- read.csv("tests/reference-data/growth/gause.csv")
for (temperature in c(15, 28)) {
  d <- subset(gause, series == 1 & temperature_c == temperature)
  describe(paste("gause", temperature), data.frame(t = d$hours, y = 1 + d$yeast))
}
table <- as.data.frame(do.call(rbind, rows)); names(table) <- c("case", "curve", "quantity", "value")
write.csv(table, file.path(folder, "rise_curves.csv"), row.names = FALSE, quote = FALSE)
