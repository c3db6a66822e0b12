# R's side of BootstrapBenchmarks and MixedBenchmarks, on the same data. Needs R 4.2 and lme4.
# resampling-and-mixed.sh runs both sides by turns.
suppressMessages(library(lme4))
noise <- function(place) { v <- sin((place + 1) * 12.9898) * 43758.5453; v - floor(v) }
median_of <- function(times, expression) {
  e <- substitute(expression); env <- parent.frame()
  median(replicate(times, system.time(eval(e, env))[["elapsed"]]))
}

i <- 0:59
X <- cbind(1, noise(i * 10 + 1), noise(i * 10 + 2), noise(i * 10 + 3))
y <- X[, 2] + noise(i * 10 + 7)
refits <- function() {
  out <- matrix(0, 10000, 4)
  for (b in 1:10000) {
    k <- sample.int(60, replace = TRUE)
    out[b, ] <- .lm.fit(X[k, ], y[k])$coefficients
  }
  out
}
cat(sprintf("R .lm.fit, 10,000 refits: %.3f s\n", median_of(7, refits())))

r <- 0:(24000 - 1)
g <- r %/% 12
x <- noise(3 * r)
d <- data.frame(x, group = factor(paste0("g", g)),
                y = 10 + 2 * x + 3 * noise(200000 + g) + 2 * noise(300000 + g) * x + noise(3 * r + 1) + noise(3 * r + 2))
cat(sprintf("lme4, intercepts: %.3f s\n", median_of(7, lmer(y ~ x + (1 | group), d))))
cat(sprintf("lme4, intercepts and slopes: %.3f s\n", median_of(7, lmer(y ~ x + (x | group), d))))
fast <- lmerControl(calc.derivs = FALSE)
cat(sprintf("lme4 without its check of derivatives, intercepts: %.3f s\n",
            median_of(7, lmer(y ~ x + (1 | group), d, control = fast))))
cat(sprintf("lme4 without its check of derivatives, intercepts and slopes: %.3f s\n",
            median_of(7, lmer(y ~ x + (x | group), d, control = fast))))
print(VarCorr(lmer(y ~ x + (x | group), d)), digits = 8)
