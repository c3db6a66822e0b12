# Writes what the tests of censored regression compare with. Needs R (4.2 was used) and its package survival.
# Run it in this folder: Rscript censored.R
suppressMessages(library(survival))
options(digits = 17)

write <- function(frame, file) write.csv(frame, file, row.names = FALSE, quote = FALSE, na = "")

answers <- function(case, fit) {
  names <- c(names(coef(fit)), "ln spread")
  names[names == "(Intercept)"] <- "constant"
  error <- sqrt(diag(vcov(fit)))
  values <- c(coef(fit), log(fit$scale), error, vcov(fit)[1, 2], fit$loglik[2])
  data.frame(case = case, quantity = c(names, paste(names, "SE"), "covariance", "log-likelihood"),
             value = format(values, digits = 16, trim = TRUE, scientific = TRUE))
}

# The values of the last coefficient whose profile log-likelihood falls by half of n ln(1 + t t / v).
profile95 <- function(case, y, x) {
  n <- length(x)
  fit <- survreg(y ~ x, dist = "lognormal", control = tight)
  fall <- n * log1p(qt(0.975, n - 2)^2 / (n - 2)) / 2
  excess <- function(value) {
    held <- survreg(y ~ 1 + offset(value * x), dist = "lognormal", control = tight)
    fit$loglik[2] - held$loglik[length(held$loglik)] - fall
  }
  error <- sqrt(vcov(fit)[2, 2])
  ends <- coef(fit)[2] + c(-20, 0, 20) * error
  low <- uniroot(excess, ends[1:2], tol = 1e-12)$root
  high <- uniroot(excess, ends[2:3], tol = 1e-12)$root
  data.frame(case = case, quantity = c("95 low", "95 high"),
             value = format(c(low, high), digits = 16, trim = TRUE, scientific = TRUE))
}

tight <- survreg.control(rel.tolerance = 1e-14, maxiter = 200)

lognormal <- function(case, columns) {
  data <- read.csv(sprintf("../censored/%s.csv", case))
  y <- Surv(data$low, data$high, type = "interval2")
  x <- data[columns]
  fit <- if (length(columns) == 0) survreg(y ~ 1, dist = "lognormal", control = tight)
         else survreg(reformulate(columns, "y"), x, dist = "lognormal", control = tight)
  case <- paste(c(case, columns), collapse = " ")
  if (length(columns) == 0) answers(case, fit) else rbind(answers(case, fit), profile95(case, y, x[[1]]))
}

# Purchases of durable goods, censored at 0 from below: Tobin (1958). The normal model of them is the log-normal model
# of their exponentials.
write(data.frame(durable = tobin$durable, age = tobin$age, liquidity = tobin$quant), "tobin.csv")
normal <- survreg(Surv(durable, durable > 0, type = "left") ~ age + quant, tobin, dist = "gaussian", control = tight)
names(normal$coefficients)[3] <- "liquidity"

write(rbind(lognormal("cosmesis", "chemotherapy"), lognormal("all-kinds", "temperature_c"),
            lognormal("looks", character()), lognormal("looks", "temperature_c"), answers("tobin", normal)),
      "censored-expected.csv")
