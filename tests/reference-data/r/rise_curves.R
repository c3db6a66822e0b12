# Fits both rise curves in base R, apart from our own code, and writes rise_curves.csv beside itself: the doughs of the
# demo journal, and the regrowth of pasture of NIST's set Rat42 as mm above 50: a vessel whose start is well away from 0.
# Run from the top of the checkout: Rscript tests/reference-data/r/rise_curves.R
folder <- "tests/reference-data/r"
rises <- list(
  Gompertz = quote(A * exp(-exp(mu * exp(1) / A * (lag - t) + 1))),
  logistic = quote(A / (1 + exp(4 * mu / A * (lag - t) + 2))))
# The lag by the minute of doubling, for the doubling's own profile.
lags <- list(
  Gompertz = quote((two - A / (mu * exp(1)) * (1 - log(-log(1 / A))))),
  logistic = quote((two - A / (4 * mu) * (2 - log(A - 1)))))
# As far down as rounding lets nls go; what then is no solution to six digits is refused.
tight <- nls.control(tol = 1e-12, maxiter = 100, minFactor = 1e-10, warnOnly = TRUE)

size <- function(rise, held = list()) do.call(substitute, list(call("*", quote(S), call("+", 1, rise)), held))

fit <- function(rise, d, start) {
  expression <- size(rise)
  f <- deriv(expression, names(start), c(names(start), "t"))
  call <- as.call(lapply(c("f", names(start), "t"), as.name))
  formula <- as.formula(call("~", quote(y), call))
  found <- suppressWarnings(nls(formula, d, start = start, control = tight))
  if (found$convInfo$finTol > 1e-6) stop("no solution")
  found
}

# The ends of a profile interval: the least sum of squares with the parameter held exceeds the least of all by t t s s.
ends <- function(rise, d, model, name) {
  b <- as.list(coef(model)); e <- summary(model)$coefficients[name, 2]
  limit <- qt(0.975, df.residual(model))^2 * summary(model)$sigma^2
  one <- function(direction) {
    near <- b[names(b) != name]; last <- NULL
    # The best fit with the parameter held; nlminb goes on where nls stalls in rounding. Every number is counted in its
    # neighbouring solution's.
    excess <- function(value) {
      whole <- size(rise, setNames(list(value), name))
      f <- deriv(whole, names(near), c(names(near), "t"))
      at <- function(p) suppressWarnings(do.call(f, c(setNames(as.list(p * unlist(near)), names(near)), list(t = d$t))))
      squares <- function(p) { v <- sum((d$y - at(p))^2); if (is.finite(v)) v else 1e10 }
      slope <- function(p) {
        m <- at(p)
        v <- colSums(-2 * (d$y - m) * attr(m, "gradient")) * unlist(near)
        ifelse(is.finite(v), v, 0)
      }
      p <- rep(1, 3)
      for (again in 1:3)
        p <- nlminb(p, squares, slope, control = list(rel.tol = 1e-15, x.tol = 1e-12, iter.max = 1000, eval.max = 2000))$par
      last <<- setNames(as.list(p * unlist(near)), names(near))
      squares(p) - deviance(model) - limit
    }
    inside <- b[[name]]; step <- e
    for (k in 1:100) {
      outside <- inside + direction * step / 4
      at <- tryCatch(excess(outside), error = function(problem) NA)
      if (is.na(at)) return(NA)
      if (at > 0) return(uniroot(excess, sort(c(inside, outside)), tol = 1e-9 * e)$root)
      inside <- outside; near <- last
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
pasture <- subset(read.csv("tests/reference-data/nist/nonlinear.csv"), set == "Rat42")
describe("pasture", data.frame(t = pasture$x1, y = 50 + pasture$y))
table <- as.data.frame(do.call(rbind, rows)); names(table) <- c("case", "curve", "quantity", "value")
write.csv(table, file.path(folder, "rise_curves.csv"), row.names = FALSE, quote = FALSE)
