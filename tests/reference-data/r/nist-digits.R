# Writes how many digits of the certified NIST linear regressions R's own lm gets right: the worst over all
# coefficients and their standard errors. Needs only R itself (4.2 was used). Run it in this folder.
digits <- function(value, certified) {
  if (is.na(value)) return(0)
  error <- abs(value - certified) / ifelse(certified == 0, 1, abs(certified))
  if (error == 0) 15 else min(15, max(0, -log10(error)))
}

degree <- c(Norris = 1, Pontius = 2, NoInt1 = 1, NoInt2 = 1, Filip = 10, Longley = 0,
            Wampler1 = 5, Wampler2 = 5, Wampler3 = 5, Wampler4 = 5, Wampler5 = 5)
certified <- read.csv("../nist/certified.csv")

worst <- sapply(names(degree), function(set) {
  values <- with(certified[certified$set == set, ], setNames(value, quantity))
  data <- read.csv(sprintf("../nist/%s.csv", set))
  x <- if (degree[[set]] == 0) as.matrix(data[-1]) else outer(data$x, seq_len(degree[[set]]), "^")
  colnames(x) <- paste0("B", seq_len(ncol(x)))
  constant <- "B0" %in% names(values)
  fit <- if (constant) lm(data$y ~ x) else lm(data$y ~ x - 1)
  wanted <- c(if (constant) "B0", colnames(x))
  found <- wanted[!is.na(coef(fit))]
  table <- suppressWarnings(summary(fit))$coefficients
  if (length(found) < length(wanted)) return(0)
  min(mapply(function(name, estimate, error) {
    min(digits(estimate, values[[name]]), digits(error, values[[paste("SD of", name)]]))
  }, found, table[, 1], table[, 2]))
})

write.csv(data.frame(set = names(degree), digits = sprintf("%.1f", floor(worst * 10) / 10)), "nist-digits-lm.csv",
          row.names = FALSE, quote = FALSE)
