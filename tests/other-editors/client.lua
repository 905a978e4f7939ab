-- Opens one build in Neovim over `dryfit lsp` as the README sets it up, and writes down what the editor then knows; judges nothing.
local answer = {}

local function work()
  local file, root = vim.env.DRYFIT_FILE, vim.env.DRYFIT_ROOT
  local command = vim.fn.json_decode(vim.env.DRYFIT_COMMAND)
  vim.cmd('edit ' .. vim.fn.fnameescape(file))
  local buffer = vim.api.nvim_get_current_buf()
  local start = vim.lsp.start_client or vim.lsp.start
  local client = start({
    name = 'dryfit',
    cmd = command,
    root_dir = root,
    get_language_id = function() return 'dryfit' end,
  })
  assert(client, 'no client')
  vim.lsp.buf_attach_client(buffer, client)
  local count = tonumber(vim.env.DRYFIT_COUNT)
  vim.wait(20000, function() return #vim.diagnostic.get(buffer) >= count end, 50)
  -- A moment more: one finding too many must be seen as well.
  vim.wait(300)
  answer.findings = {}
  for _, found in ipairs(vim.diagnostic.get(buffer)) do
    table.insert(answer.findings, {
      check = found.code or (found.user_data and found.user_data.lsp and found.user_data.lsp.code),
      message = found.message,
      start = { found.lnum, found.col },
      ['end'] = { found.end_lnum, found.end_col },
    })
  end
  local line = vim.fn.search('^name:') - 1
  local hovers = vim.lsp.buf_request_sync(buffer, 'textDocument/hover', {
    textDocument = vim.lsp.util.make_text_document_params(buffer),
    position = { line = line, character = 8 },
  }, 10000)
  for _, reply in pairs(hovers or {}) do
    if reply.result then answer.hover = reply.result.contents.value or reply.result.contents end
  end
  answer.version = vim.fn.execute('version'):match('NVIM v%S+')
  vim.lsp.stop_client((vim.lsp.get_clients or vim.lsp.get_active_clients)())
end

local ok, trouble = pcall(work)
if not ok then answer.error = tostring(trouble) end
vim.fn.writefile({ vim.fn.json_encode(answer) }, vim.env.DRYFIT_ANSWER)
vim.cmd('qa!')
